import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { root } from "../architecture/workspace.ts";
import { announcedStatus, runShown, splitConsole } from "./console.ts";
import { type Block, listBlocks } from "./examples.ts";

const blocks = listBlocks().filter((block) => block.language === "console");
const shown = blocks.flatMap((block) =>
  splitConsole(block).map((each, index, all) => ({
    ...each,
    name: `${block.file}:${each.line}`,
    status: index === all.length - 1 ? announcedStatus(block) : 0,
  })),
);

test("the command is shown in use as soon as there is one", () => {
  const exists = existsSync(join(root, "packages/tapewise/src/command/main.ts"));
  const inReadme = shown.filter(({ name }) => name.startsWith("README.md:"));
  expect(inReadme.length).toBeGreaterThanOrEqual(exists ? 1 : 0);
});

for (const { name, command, output, status } of shown) {
  test(`${name} prints what the page shows`, () => {
    const printed = runShown(command);
    expect({ output: printed.output, status: printed.status }, printed.errors).toEqual({ output, status });
  });
}

describe("the checks are not blind", () => {
  const block = (code: string, flags: readonly string[] = []): Block => ({
    file: "x.md",
    line: 5,
    language: "console",
    flags,
    code,
  });

  test("a block is split into its commands and their outputs", () => {
    expect(splitConsole(block("$ echo a\na\n\n$ echo b \\\n>   c\nb c\n"))).toEqual([
      { line: 5, command: "echo a", output: "a" },
      { line: 8, command: "echo b \\\n  c", output: "b c" },
    ]);
    expect(() => splitConsole(block("a\n$ echo a"))).toThrow('x.md:5: output before the first "$ " line');
  });

  test("a command runs in a shell, from the project's folder, under this Node", () => {
    expect(runShown("ls package.json | cat; node --version")).toEqual({
      output: `package.json\n${process.version}`,
      errors: "",
      status: 0,
    });
  });

  test("a failure is seen", () => {
    expect(runShown("echo a; exit 3")).toEqual({ output: "a", errors: "", status: 3 });
    expect(announcedStatus(block("", ["exit=3"]))).toBe(3);
    expect(announcedStatus(block(""))).toBe(0);
  });

  test("npx runs our own command and nothing else", () => {
    expect(runShown("npx somebody-elses-tool").status).toBe(127);
  });
});
