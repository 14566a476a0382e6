import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const at = folderWith({
  "three.csv": "# chart: Doily 45\nsize,torso-length (cm)\nS,35-40\nM,40-45\nL,45-50\n",
  "one.csv": "size,torso-length (cm)\none,38-43\n",
  "gap.csv": "size,torso-length (cm)\nS,\nM,38.5-41.5\n",
  "neck.csv": "size,neck-base-girth (cm)\nS,38-43\n",
  "log.ndjson": Array.from({ length: 30 }, (_, k) =>
    JSON.stringify({
      v: 1,
      id: `r${k}`,
      at: "2026-05-04",
      product: { chart: "Doily 45" },
      size: "M",
      outcome: "exchanged",
      reason: "harness-too-long",
      estimates: { "torso-length": { mm: 411, uncertaintyMm: 8 } },
    }),
  ).join("\n"),
});
const returns = (chart: string, ...argv: readonly string[]) =>
  runCommand(["returns", "--chart", at(chart), "--cut", "women", ...argv]);
const first = async (chart: string, ...argv: readonly string[]) =>
  JSON.parse((await returns(chart, ...argv, "--json")).stdout).charts[0];

describe("tapewise returns", () => {
  test("tells what comes back, and what it rests on", async () => {
    const { status, stdout, stderr } = await returns("three.csv");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^ {2}the chart as printed +\d+\.\d % +\d+\.\d % +\S/m);
    expect(stdout).not.toContain("relabelled  ");
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain("an upper bound of exchanges about fit");
    expect(text).toContain("Sample: women, 990 people measured.");
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("tells what a relabelled chart would save once the offset is known", async () => {
    const { stdout } = await returns("three.csv", "--offset", "15 mm");
    expect(stdout).toMatch(/^ {2}a chart relabelled +/m);
    expect(stdout).toContain("comes out +1.5 cm against what is printed");
    const one = await first("three.csv", "--offset", "15 mm");
    expect(one.printed.exchanged - one.relabelled.exchanged).toBeCloseTo(one.saved, 12);
    expect(stdout).toContain(`save ${(one.saved * 100).toFixed(1)} exchanges in a hundred`);
    for (const shares of [one.printed, one.relabelled]) {
      expect(shares.kept + shares.exchanged + shares.sentBack).toBeCloseTo(1, 9);
    }
  });

  test("takes an offset to either side, with its uncertainty", async () => {
    const one = await first("three.csv", "--offset", "-1.5 cm", "--offset-uncertainty", "3 mm");
    expect(one.offsets).toEqual({ "torso-length": { mm: -15, uncertaintyMm: 3 } });
  });

  test("takes an offset up to the most that it may be", async () => {
    const one = await first("three.csv", "--offset", "-20 cm", "--offset-uncertainty", "0");
    expect(one.offsets).toEqual({ "torso-length": { mm: -200, uncertaintyMm: 0 } });
  });

  test("agrees with whom a chart serves where a size states no length", async () => {
    const { printed } = await first("gap.csv");
    expect(printed.exchanged).toBe(0);
    const { stdout } = await runCommand(["served", "--chart", at("gap.csv"), "--cut", "women", "--json"]);
    expect(printed.sentBack).toBeCloseTo(JSON.parse(stdout).charts[0].coverage.byNone.share, 6);
  });

  test("says that outcomes go by the name of a file where the chart states none", async () => {
    const { stderr } = await returns("one.csv", "--log", at("log.ndjson"));
    expect(stderr).toContain("[log-chart-named-by-file]");
    const { stderr: named } = await returns("three.csv", "--log", at("log.ndjson"));
    expect(named).toBe("");
  });

  test("one size has nothing to exchange it for", async () => {
    const one = await first("one.csv", "--offset", "15 mm");
    expect([one.printed.exchanged, one.relabelled.exchanged, one.saved]).toEqual([0, 0, 0]);
    const { stdout } = await returns("one.csv", "--offset", "15 mm");
    expect(stdout).toContain("change next to nothing");
  });

  test("learns the offset from a log", async () => {
    const one = await first("three.csv", "--log", at("log.ndjson"));
    expect(one.offsets["torso-length"].mm).toBeGreaterThan(0);
    expect(one.offsets["torso-length"].uncertaintyMm).toBeGreaterThan(0);
    expect(one.saved).toBeGreaterThan(0);
  });

  test("better readings bring fewer back", async () => {
    const [alone, often] = await Promise.all([
      first("three.csv", "--readings", "1"),
      first("three.csv", "--readings", "9", "--measured-by", "helper", "--step", "1 mm"),
    ]);
    expect(often.printed.exchanged).toBeLessThan(alone.printed.exchanged);
  });

  test("a chart that cannot be judged is an issue", async () => {
    const { status, stdout, stderr } = await returns("neck.csv");
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/\[coverage-/);
  });

  test.each([
    [[], "--chart chart.csv"],
    [["--chart", at("one.csv"), "--offset", "15"], "argument '15' is invalid. 15 has no unit."],
    [["--chart", at("one.csv"), "--offset", "15 m"], "[offset-too-large]"],
    [["--chart", at("one.csv"), "--offset", "-201 mm"], "[offset-too-large]"],
    [["--chart", at("one.csv"), "--offset", "1 cm", "--offset-uncertainty", "3 m"], "[offset-too-large]"],
    [["--chart", at("one.csv"), "--offset", "1 cm", "--offset-uncertainty", "-3 mm"], "0 or more"],
    [["--chart", at("one.csv"), "--offset-uncertainty", "3 mm"], "goes with '--offset'"],
    [["--chart", at("one.csv"), "--offset", "1 cm", "--log", "x"], "cannot be used with"],
    [["--chart", at("one.csv"), "--readings", "0"], "from 1 to 100"],
    [["--chart", at("one.csv"), "--log", at("none.ndjson")], "file-missing"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await runCommand(["returns", ...argv]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
