import { describe, expect, test } from "vitest";
import { checkTypes } from "./check-types.ts";
import { readLiteral } from "./claims.ts";
import {
  type Block,
  findBlocks,
  findDocstrings,
  listBareExamples,
  listBlocks,
  listPages,
} from "./examples.ts";
import { runExample } from "./run-example.ts";

/** Fewer examples than this mean that the search for them is broken. */
const FEWEST_EXAMPLES = 120;

const blocks = listBlocks().filter((block) => block.language === "ts");
const runnable = blocks.filter((block) => !block.flags.includes("no-run"));

test("the examples are found", () => {
  expect(listPages()).toContain("packages/outcome/README.md");
  expect(blocks.length).toBeGreaterThanOrEqual(FEWEST_EXAMPLES);
});

test("an example's flags are known ones", () => {
  const strange = blocks.filter(({ flags }) => flags.some((flag) => flag !== "no-run"));
  expect(strange.map(({ file, line, flags }) => `${file}:${line}: ${flags.join(" ")}`)).toEqual([]);
});

test("every @example holds a block of ts", () => {
  expect(listBareExamples()).toEqual([]);
});

test("every example compiles", () => {
  expect(checkTypes(blocks)).toEqual([]);
});

describe("every example does what it says", () => {
  test.each(runnable.map((block) => [`${block.file}:${block.line}`, block] as const))(
    "%s",
    async (_name, block) => {
      const checked = await runExample(block);
      expect(checked.length, "the example claims nothing: give a line its `// => value`").toBeGreaterThan(0);
      for (const { line, claimed, actual } of checked) {
        expect(actual, `${block.file}:${line}`).toStrictEqual(claimed);
      }
    },
  );
});

describe("the checks are not blind", () => {
  const example = (code: string): Block => ({ file: "x.md", line: 10, language: "ts", flags: [], code });

  test.each([
    ["1 + 1; // => 3", 10, 2, 3],
    ["\n[1].concat(2);\n// => [1, 3]", 12, [1, 2], [1, 3]],
    ["const a = { b: 1 }; // => { b: 2 }", 10, { b: 1 }, { b: 2 }],
    ['console.log("a"); // => "b"', 10, "a", "b"],
    ["Promise.resolve(1) // => 2".replace("Promise", "await Promise"), 10, 1, 2],
    ["({ a: [1,\n 2] });\n// => {\n//   a: [1, 3],\n// }", 12, { a: [1, 2] }, { a: [1, 3] }],
    ['import { success } from "@tapewise/outcome";\nsuccess(1).ok; // => false', 11, true, false],
    ["let a = 1;\na; // => 2\na = 2;", 11, 1, 2],
  ])("a claim that does not hold is seen: %j", async (code, line, actual, claimed) => {
    expect(await runExample(example(code))).toEqual([{ line, actual, claimed }]);
  });

  test("a claim about a list is about the list as it was then", async () => {
    expect(await runExample(example("const a = [1];\na; // => [1]\na.push(2);"))).toEqual([
      { line: 11, actual: [1], claimed: [1] },
    ]);
  });

  test.each([
    ["1; // => one", 'x.md:10: "one" is no literal'],
    ["1; // => [1,", 'x.md:10: "[1," is no literal'],
    ["// => 1", "x.md:10: a claim about nothing"],
    ["if (true) { }\n// => 1", "x.md:11: is never reached"],
    ["function f() {\n  return 1; // => 1\n}", "x.md:11: a claim in the middle of a statement"],
    ['const a = 1;\nthrow new RangeError("no");', "x.md:11: throws RangeError: no"],
  ])("an example that cannot be checked is seen: %j", async (code, message) => {
    await expect(runExample(example(code))).rejects.toThrow(message);
  });

  test("an arrow in a text is no claim", async () => {
    expect(await runExample(example('const a = "x // => 1";'))).toEqual([]);
  });

  test("a type error is seen, by file and line", () => {
    const faulty = example(
      'import { success } from "@tapewise/outcome";\nconst text: string = success(1).value;',
    );
    expect(checkTypes([example("export const a = 1;"), faulty])).toEqual([
      "x.md:11: Type 'number' is not assignable to type 'string'.",
    ]);
  });

  test("a name that a package does not export is seen", () => {
    expect(checkTypes([example('import { nothing } from "@tapewise/outcome";')])).toEqual([
      expect.stringContaining("x.md:10: Module '\"@tapewise/outcome\"' has no exported member 'nothing'"),
    ]);
  });

  test("blocks are found in pages, with their lines and flags", () => {
    const page = "# A\n\n```ts\n1; // => 1\n```\n\n- b\n\n  ```ts no-run\n  2;\n  ```\n\n```sh\nls\n```\n";
    expect(findBlocks("a.md", page, 1)).toEqual([
      { file: "a.md", line: 4, language: "ts", flags: [], code: "1; // => 1" },
      { file: "a.md", line: 10, language: "ts", flags: ["no-run"], code: "2;" },
      { file: "a.md", line: 14, language: "sh", flags: [], code: "ls" },
    ]);
    expect(() => findBlocks("a.md", "```ts\n1;", 1)).toThrow("a.md:1: a block that never ends");
  });

  test("blocks are found in docstrings, with their lines", () => {
    const text =
      "const a = 1;\n/**\n * Doc.\n *\n * @example\n * ```ts\n * f(); // => 1\n * ```\n */\nexport function f() {}\n";
    const [doc, ...others] = findDocstrings(text);
    expect(others).toEqual([]);
    expect(findBlocks("a.ts", doc?.comment ?? "", doc?.line ?? 0)).toEqual([
      { file: "a.ts", line: 7, language: "ts", flags: [], code: "f(); // => 1" },
    ]);
  });

  test.each<[string, unknown]>([
    ["-1.5e3", -1500],
    ['["a", null, undefined]', ["a", null, undefined]],
    ['{ a: { "b-c": -0 } }', { a: { "b-c": -0 } }],
    ["Infinity", Number.POSITIVE_INFINITY],
    ["12n", 12n],
    ["`a`", "a"],
  ])("the literal %s is read", (text, literal) => {
    expect(readLiteral(text)).toEqual({ literal });
  });

  test.each(["x", "f()", "1 + 1", "...", "[x]", "{ [a]: 1 }", "1; 2", ""])("%j is no literal", (text) => {
    expect(readLiteral(text)).toBeUndefined();
  });
});
