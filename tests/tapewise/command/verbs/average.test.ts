import { resampleAveraging, simulateAveraging } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART, runCommand } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "other.csv": "size,torso-length (cm)\nS,30-42\n",
  "belts.csv": "size,hip-belt-girth (cm)\nS,70-98\n",
  "class.txt": "43.2 cm\n\n44.1 cm\r\n17 1/8 in\n",
  "faulty.txt": "43.2 cm\n\nlong\n",
});
const average = (...argv: readonly string[]) => runCommand(["average", ...argv]);
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("tapewise average", () => {
  test("a drawn person: one series, many series, and what stays", async () => {
    const argv = [
      "--length",
      "43.6 cm",
      "--per-reading",
      "6 mm",
      "--lasting",
      "7 mm",
      "--step",
      "0",
      "--seed",
      "5",
    ];
    const { status, stdout, stderr } = await average(...argv);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain("One series (seed 5)");
    expect(stdout.match(/^ +\d+ +4\d\.\d\d +4\d\.\d\d/gm)).toHaveLength(10);
    const results = simulateAveraging({
      lengthMm: 436,
      error: { biasMm: 0, lastingMm: 7, noiseMm: 6, stepMm: 0 },
      counts: [1, 2, 3, 5, 7, 10],
      runs: 2000,
      seed: 5,
    });
    for (const { count, mean } of results) {
      expect(stdout).toMatch(new RegExp(`^ +${count} +-?0\\.0\\d +${(mean.sdMm / 10).toFixed(2)} `, "m"));
    }
    // √(7² + 6²/10) = 7.25 mm: about that is left, whatever is drawn.
    expect(Number(/falls from [\d.]+ to ([\d.]+) cm/.exec(flat(stdout))?.[1])).toBeCloseTo(0.725, 1);
    expect((await average(...argv)).stdout).toBe(stdout);
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("wrong sizes of 1, 3 and 5 readings on a chart", async () => {
    const { stdout } = await average(
      "--length",
      "41.8 cm",
      "--chart",
      at("plain.csv"),
      "--measured-by",
      "self",
    );
    expect(flat(stdout)).toMatch(
      /a size of plain that the length does not lie in is picked by [\d.]+ % with 1, [\d.]+ % with 3, [\d.]+ % with 5 readings/,
    );
    expect(stdout).toContain("wrong size");
  });

  test("averaging does not take a habit away: the wrong size becomes surer", async () => {
    const { stdout } = await average(
      ...["--length", "43.6 cm", "--bias", "8 mm", "--per-reading", "6 mm", "--lasting", "0", "--json"],
      ...["--chart", at("other.csv")],
    );
    const { results } = JSON.parse(stdout);
    expect(results.at(-1).mean.biasMm).toBeGreaterThan(7);
    expect(results.at(-1).mean.sdMm).toBeLessThan(results[0].mean.sdMm / 2);
  });

  test("with slips the median errs less than the mean", async () => {
    const { stdout } = await average(
      ...["--length", "43.6 cm", "--slips", "--per-reading", "2 mm", "--lasting", "0", "--readings", "15"],
    );
    expect(flat(stdout)).toContain("The median of 15 errs less than the mean: a slip drags the mean");
    expect(stdout).toMatch(/^ +\d+ +\d\d\.\d\d slip /m);
  });

  test("a class's own readings, from the command line", async () => {
    const { status, stdout } = await average(
      "43.0",
      "cm",
      "44 cm",
      "43.0 cm",
      "44.0 cm",
      "--length",
      "43 cm",
      "--seed",
      "3",
    );
    expect(status).toBe(0);
    const text = flat(stdout);
    expect(text).toContain("Averaging your readings of the torso length");
    expect(text).toContain("They are held against 43.00 cm.");
    const [one] = resampleAveraging({
      readingsMm: [430, 440, 430, 440],
      lengthMm: 430,
      counts: [1, 2, 3, 5, 7, 10],
      runs: 2000,
      seed: 3,
    });
    // Half of the readings are 10 mm too long: off by 5 mm.
    expect(stdout).toMatch(
      new RegExp(`^ +1 +0\\.5\\d? *\\d* +${((one?.mean.sdMm ?? 0) / 10).toFixed(2)} `, "m"),
    );
    expect(stdout).toMatch(/^ +4 +44\.00 +43\.50 /m);
  });

  test("and from a file, one a line, with mixed units", async () => {
    const { status, stdout } = await average("--own", at("class.txt"));
    expect(status).toBe(0);
    // 17 1/8 in = 434.975 mm; (432 + 441 + 434.975) / 3 = 435.99
    expect(flat(stdout)).toContain("They are held against their own mean, 43.60 cm");
    const input = await runCommand(["average", "--own", "-", "--unit", "in"], "17\n17.5\n17.25\n");
    expect(input.stdout).toContain("lengths in in");
    expect(input.stdout).toMatch(/^ +2 +17\.500 +17\.250 /m);
  });

  test("a line that cannot be read is named, and nothing is told without it", async () => {
    const { status, stdout, stderr } = await average("--own", at("faulty.txt"));
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(flat(stderr)).toContain("faulty.txt:3:1:");
    const json = await average("--own", at("faulty.txt"), "--json");
    expect(JSON.parse(json.stdout).issues[0].place).toEqual({ file: at("faulty.txt"), line: 3, column: 1 });
    const bare = await average("43.2", "44.1 cm");
    expect(bare.stderr).toContain("[length-no-unit]");
    expect((await average("--own", at("missing.txt"))).status).toBe(2);
    const belts = await average("--length", "43 cm", "--chart", at("belts.csv"));
    expect(belts.status).toBe(1);
    expect(belts.stderr).toContain("[plan-chart-without-dimension]");
  });

  test("prints JSON without the results of single series", async () => {
    const { stdout } = await average("--length", "43.6 cm", "--json", "--readings", "4");
    const answer = JSON.parse(stdout);
    expect(answer).toMatchObject({
      source: "drawn",
      lengthMm: 436,
      isStated: true,
      basis: "assumption",
      issues: [],
    });
    expect(answer.series).toHaveLength(4);
    expect(answer.results.map(({ count }: { count: number }) => count)).toEqual([1, 2, 3, 4]);
    expect(stdout).not.toContain("valuesMm");
    expect(stdout).not.toContain("null");
  });

  test.each([
    [[], "--length"],
    [["43 cm"], "two readings or more"],
    [["43 cm", "44 cm", "--own", "x.txt"], "leave one of them out"],
    [["43 cm", "44 cm", "--bias", "5 mm"], "--bias"],
    [["43 cm", "44 cm", "--measured-by", "self"], "--measured-by"],
    [["--length", "43 cm", "--bias", "5"], "[length-no-unit]"],
    [["--length", "43 cm", "--readings", "1"], "from 2 to 100"],
    [["--length", "43 cm", "--runs", "1e9"], "whole number"],
    [["--length", "43 cm", "--seed", "x"], "whole number"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await average(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });

  test("takes one chart only", async () => {
    const { status, stderr } = await average(
      "--length",
      "43 cm",
      "--chart",
      at("plain.csv"),
      at("other.csv"),
    );
    expect(status).toBe(2);
    expect(stderr).toContain("give one");
  });
});
