import { existsSync, readFileSync } from "node:fs";
import { parseChart } from "@tapewise/charts";
import { chartCoverage } from "@tapewise/coverage";
import { unwrap } from "@tapewise/outcome";
import { referencePopulation } from "@tapewise/population";
import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const CHART = "size,torso-length (cm)\nS,38-43\nM,42-47\nL,49-54\n";
const at = folderWith({
  "plain.csv": CHART,
  "hips.csv": "size,torso-length (cm),hip-girth (cm)\nS,38-43,80-110\n",
  "belt.csv": "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-98\n",
  "women.json": JSON.stringify({
    chart: "Women's <pack>",
    cut: "women",
    sizes: [{ size: "S", "torso-length": { from: "15 in", to: "17 in" } }],
  }),
  "neck.csv": "size,neck-base-girth (cm)\nS,38-43\n",
});
const served = (...argv: readonly string[]) => runCommand(["served", ...argv]);

describe("tapewise served", () => {
  test("says whom a chart leaves out, and where", async () => {
    const { status, stdout, stderr } = await served("--chart", at("plain.csv"), "--cut", "women");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const coverage = unwrap(
      chartCoverage(parseChart(CHART, { chart: "plain" }), referencePopulation("women")),
    );
    const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
    expect(stdout).toContain(`Leaves out ${percent(coverage.byNone.share)} of women.`);
    expect(stdout).toMatch(new RegExp(`^ {2}served +${percent(coverage.served.share)} \\(`, "m"));
    expect(stdout).toMatch(/^ {4}below the range +18\.9 % \(/m);
    expect(stdout).toMatch(/^ {4}in the gap 47\.0 to 49\.0 +/m);
  });

  test("says the sample, the source, the model and the caveat, and what the brackets are", async () => {
    const { stdout } = await served("--chart", at("plain.csv"), "--cut", "both");
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain("50.0 % women (990 people measured), 50.0 % men (2040 people measured)");
    expect(text).toContain("Source: ANSUR II (2012)");
    expect(text).toContain("Model: joint normal.");
    expect(text).toContain("Caveat: Soldiers of 2012");
    expect(text).toContain("lengths in cm");
    expect(text).toContain("(parametric bootstrap)");
    expect(stdout).toMatch(/^ +all +women +men$/m);
    expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });

  test("takes the cut of the chart where it has one, and shows inches where asked", async () => {
    const { stdout } = await served("--chart", at("women.json"), "--show-unit", "in");
    expect(stdout).toContain("Women's <pack>");
    expect(stdout).toContain("of women. Judged by torso length; lengths in in.");
  });

  test("a girth is lognormal, and Wilson's interval stands in brackets", async () => {
    const text = (await served("--chart", at("hips.csv"), "--cut", "men")).stdout.replace(/\s+/g, " ");
    expect(text).toContain("Model: joint normal, with the logarithm of the hip girth.");
    expect(text).toContain("(Wilson's interval)");
    expect(text).toContain("hip girth above the range");
  });

  test("what the survey does not know is told", async () => {
    const { status, stdout } = await served("--chart", at("belt.csv"), "--cut", "men");
    expect(status).toBe(0);
    expect(stdout).toContain("[coverage-dimension-left-out]");
  });

  test("a chart that cannot be judged is an issue", async () => {
    const alone = await served("--chart", at("neck.csv"), "--cut", "men");
    expect(alone.status).toBe(1);
    expect(alone.stdout).toBe("");
    expect(alone.stderr).toContain("[coverage-nothing-judged]");
    const beside = await served("--chart", at("neck.csv"), at("plain.csv"), "--cut", "men");
    expect(beside.status).toBe(1);
    expect(beside.stdout).toMatch(/^plain$/m);
    const json = await served("--chart", at("neck.csv"), "--json");
    expect(JSON.parse(json.stdout).issues[0].code).toBe("coverage-nothing-judged");
  });

  test("programs get JSON even when no chart can be read", async () => {
    const { status, stdout } = await served("--chart", at("missing.csv"), "--json");
    expect(status).toBe(2);
    expect(JSON.parse(stdout).issues[0].code).toBe("file-missing");
  });

  test("several charts are told one by one and together", async () => {
    const { stdout } = await served("--chart", at("plain.csv"), at("women.json"), "--cut", "women");
    expect(stdout).toMatch(/^plain$/m);
    expect(stdout).toMatch(/^All charts together$/m);
  });

  test("prints JSON with every share and its band", async () => {
    const { stdout } = await served("--chart", at("plain.csv"), "--cut", "women", "--json");
    const answer = JSON.parse(stdout);
    expect(answer.cut).toBe("women");
    expect(answer.sample).toBe("women, 990 people measured");
    expect(answer.charts).toHaveLength(1);
    const { served: share, byNone } = answer.together;
    expect(share.share + byNone.share).toBeCloseTo(1, 12);
    expect(share.low).toBeLessThan(share.share);
    expect(share.high).toBeGreaterThan(share.share);
  });

  test("writes a picture, and says where it cannot", async () => {
    const file = at("shelf.svg");
    await served("--chart", at("women.json"), "--svg", file);
    const svg = readFileSync(file, "utf8");
    expect(svg).toMatch(/^<svg /);
    expect(svg).toContain("Women's &lt;pack&gt;");
    expect(svg).toContain("Caveat: Soldiers of 2012");
    const lost = at("nowhere/shelf.svg");
    const { status, stderr, stdout } = await served("--chart", at("plain.csv"), "--svg", lost);
    expect(status).toBe(2);
    expect(stderr).toContain("[file-unwritable]");
    expect(stdout).toContain("Leaves out");
    expect(existsSync(lost)).toBe(false);
  });

  test.each([
    [[], "--chart"],
    [["--chart", at("plain.csv"), "--cut", "youth"], "women, men, both"],
    [["--chart", "--json"], "--chart"],
    [["--chart", at("missing.csv")], "[file-missing]"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await served(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
