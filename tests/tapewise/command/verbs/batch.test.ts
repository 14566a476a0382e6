import { Readable, Writable } from "node:stream";
import { safeParseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { Ajv2020 } from "ajv/dist/2020.js";
import { chooseLine } from "tapewise/batch";
import { choiceJsonSchema, personJsonSchema } from "tapewise/schema";
import { describe, expect, test } from "vitest";
import { run } from "../../../../packages/tapewise/src/command/run.ts";
import { collect, folderWith, PLAIN_CHART, runCommand, terminal } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "again-plain.csv": `# chart: plain\n${PLAIN_CHART}`,
  "faulty.csv": "size,torso-length (cm)\nS,38-43\nM,47-42\nL,46-51\n",
  "empty.csv": "",
  "other.csv": PLAIN_CHART,
});
const plain = unwrap(safeParseChart(PLAIN_CHART, { chart: "plain" }));
const person = (id: string, ...readings: readonly string[]) =>
  JSON.stringify({ id, readings: { "torso-length": readings } });
const batch = (input: string | readonly Uint8Array[], ...argv: readonly string[]) =>
  runCommand(["batch", "--chart", at("plain.csv"), ...argv], input);
const linesOf = (stdout: string) =>
  stdout === ""
    ? []
    : stdout
        .trimEnd()
        .split("\n")
        .map((line): Record<string, unknown> => JSON.parse(line));

describe("tapewise batch", () => {
  test("answers each line by itself, in order", async () => {
    const lines = [person("a", "44 cm", "44.5 cm"), person("b", "39 cm"), person("c", "50 cm")];
    const { status, stdout, stderr } = await batch(`${lines.join("\n")}\n`);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(linesOf(stdout)).toEqual(
      lines.map((line) => JSON.parse(JSON.stringify(chooseLine(line, [plain])))),
    );
  });

  test("puts one issue line in the place of a bad one, goes on, and has status 1 at the end", async () => {
    const { status, stdout } = await batch(
      `${person("a", "44 cm")}\n${person("b", "44")}\n{\n${person("d", "45 cm")}\n`,
    );
    expect(status).toBe(1);
    const lines = linesOf(stdout);
    expect(lines.map(({ id }) => id)).toEqual(["a", "b", null, "d"]);
    expect(lines.map((line) => "choices" in line)).toEqual([true, false, false, true]);
    expect(lines[2]).toMatchObject({ issues: [{ code: "batch-line-not-json", facts: { line: 3 } }] });
  });

  test("takes either line end, a byte order mark, and a last line without its end", async () => {
    const plainLines = await batch(`${person("a", "44 cm")}\n${person("b", "45 cm")}\n`);
    expect(await batch(`\uFEFF${person("a", "44 cm")}\r\n${person("b", "45 cm")}`)).toEqual(plainLines);
  });

  test("has no answer to blank lines", async () => {
    const { status, stdout } = await batch(`\n  \n${person("a", "44 cm")}\n\n`);
    expect(status).toBe(0);
    expect(linesOf(stdout).map(({ id }) => id)).toEqual(["a"]);
    expect(await batch("")).toEqual({ status: 0, stdout: "", stderr: "" });
  });

  test("never keeps a line of more than a megabyte, and goes on after it", async () => {
    const long = Buffer.alloc(3_000_000, "x");
    const { status, stdout } = await batch([
      Buffer.from(`${person("a", "44 cm")}\n`),
      long,
      Buffer.from(`\n${person("c", "44 cm")}\n`),
    ]);
    expect(status).toBe(1);
    expect(linesOf(stdout)).toMatchObject([
      { id: "a" },
      { id: null, issues: [{ code: "batch-line-too-long", facts: { line: 2, limit: 1_000_000 } }] },
      { id: "c" },
    ]);
  });

  test("reports bytes that are not UTF-8", async () => {
    const { status, stdout } = await batch([Buffer.from([0x7b, 0xff, 0x7d, 0x0a])]);
    expect(status).toBe(1);
    expect(linesOf(stdout)).toMatchObject([{ id: null, issues: [{ code: "batch-line-not-utf8" }] }]);
  });

  test("uses the survey figures where cut and stature are given, unless told not to", async () => {
    const line = JSON.stringify({
      id: "a",
      cut: "women",
      stature: "171 cm",
      readings: { "torso-length": ["43 cm"] },
    });
    const reasons = async (...argv: readonly string[]) => {
      const { stdout } = await batch(line, ...argv);
      const { choices }: { choices: readonly { reasons: readonly string[] }[] } = JSON.parse(stdout);
      return choices[0]?.reasons;
    };
    expect(await reasons()).toContain("prior-used");
    expect(await reasons("--prior", "reference")).toContain("prior-used");
    expect(await reasons("--prior", "none")).not.toContain("prior-used");
  });

  test("starts with a chart that could be read in part, and says so", async () => {
    const { status, stdout, stderr } = await runCommand(
      ["batch", "--chart", at("faulty.csv")],
      person("a", "44 cm"),
    );
    expect(status).toBe(1);
    expect(linesOf(stdout)).toHaveLength(1);
    expect(stderr).toContain("[chart-range-reversed]");
  });

  test.each([
    ["empty.csv", 1, "file-empty"],
    ["none.csv", 2, "file-missing"],
  ])("does not start without one of its charts: %s", async (name, expected, code) => {
    const { status, stdout, stderr } = await batch(person("a", "44 cm"), "--chart", at(name));
    expect({ status, stdout }).toEqual({ status: expected, stdout: "" });
    expect(stderr).toContain(`[${code}]`);
  });

  test("lets nothing into its answers that a terminal would act on or a reader of lines stumble over", async () => {
    const { stdout } = await batch(
      JSON.stringify({ id: "a\u001b[31m\u009b\u2028\u202e", readings: { "torso-length": ["44 cm"] } }),
    );
    for (const character of "\u001b\u009b\u2028\u202e") expect(stdout).not.toContain(character);
    expect(linesOf(stdout)[0]?.id).toBe("a\u001b[31m\u009b\u2028\u202e");
  });

  test("tells somebody at a terminal what it is waiting for", async () => {
    const { stdin } = terminal();
    stdin.end(person("a", "44 cm"));
    const out = collect();
    const err = collect();
    const status = await run(["batch", "--chart", at("plain.csv")], {
      stdin,
      stdout: out.stream,
      stderr: err.stream,
    });
    expect(status).toBe(0);
    expect(err.text()).toContain("one a line");
    expect(linesOf(out.text())).toHaveLength(1);
  });

  test("names the files of charts that bear one name, and of no others", async () => {
    const { status, stdout, stderr } = await batch(
      person("a", "44 cm"),
      "--chart",
      at("again-plain.csv"),
      at("other.csv"),
    );
    expect(status).toBe(0);
    expect(stderr).toContain("[batch-chart-name-repeated]");
    const [line] = linesOf(stdout);
    expect(line).toMatchObject({
      choices: [
        { chart: `plain (${at("plain.csv")})` },
        { chart: `plain (${at("again-plain.csv")})` },
        { chart: "other" },
      ],
    });
  });

  test("waits for a slow reader instead of piling answers up", async () => {
    const ahead: number[] = [];
    let given = 0;
    let answered = 0;
    const source = Readable.from(
      (function* () {
        for (let index = 0; index < 400; index++) {
          given += 1;
          yield Buffer.from(`${person(`p${index}`, "44 cm")}\n`);
        }
      })(),
      { objectMode: false, highWaterMark: 64 },
    );
    const slow = new Writable({
      highWaterMark: 1,
      write(chunk: Buffer, _encoding, done) {
        answered += chunk.toString("utf8").split("\n").length - 1;
        ahead.push(given - answered);
        setImmediate(done);
      },
    });
    const status = await run(["batch", "--chart", at("plain.csv")], {
      stdin: source,
      stdout: slow,
      stderr: collect().stream,
    });
    expect({ status, answered }).toEqual({ status: 0, answered: 400 });
    // However slow the reader is, only a handful of lines is ever under way.
    expect(ahead.length).toBeGreaterThan(50);
    expect(Math.max(...ahead)).toBeLessThan(10);
  });

  test("what goes in and what comes out has the published form", async () => {
    const accepts = new Ajv2020({ strict: false }).compile(personJsonSchema());
    const gives = new Ajv2020({ strict: false }).compile(choiceJsonSchema());
    const good = [
      { id: "a", readings: { "torso-length": ["44 cm"] } },
      {
        id: 7,
        cut: "men",
        stature: "6 ft",
        measuredBy: "helper",
        tool: "cord-and-ruler",
        readings: { "torso-length": ["18 in"], "chest-girth": null },
      },
      {
        unit: "cm",
        firstPack: true,
        build: ["large-chest"],
        error: { biasMm: 6, repeatMm: 8, resolutionMm: 5 },
        readings: { "torso-length": [46] },
      },
    ];
    const bad = [
      { id: "d", readings: { "torso-length": "44 cm" } },
      { id: "e", cut: "boys", readings: {} },
      [],
    ];
    for (const one of good) expect(accepts(one), JSON.stringify(accepts.errors)).toBe(true);
    for (const one of bad) expect(accepts(one)).toBe(false);
    const { stdout } = await batch([...good, ...bad].map((one) => JSON.stringify(one)).join("\n"));
    const lines = linesOf(stdout);
    expect(lines).toHaveLength(6);
    for (const line of lines) expect(gives(line), JSON.stringify(gives.errors)).toBe(true);
    expect(lines.map((line) => "choices" in line)).toEqual([true, true, true, false, false, false]);
  });
});
