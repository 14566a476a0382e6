import { anticipateError, planReadings } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART, runCommand } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "other.csv": "size,torso-length (cm)\nS,30-42\nL,42-60\n",
  "belts.csv": "size,hip-belt-girth (cm)\nS,70-98\n",
});
const plan = (...argv: readonly string[]) => runCommand(["plan", ...argv]);
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("tapewise plan", () => {
  test("how many readings a standard uncertainty takes", async () => {
    const { status, stdout, stderr } = await plan(
      "--uncertainty",
      "5 mm",
      "--per-reading",
      "8 mm",
      "--lasting",
      "3 mm",
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    // 3² + 8²/4 = 5²
    expect(flat(stdout)).toContain("For a standard uncertainty of 0.50 cm: 4 readings; they bring 0.50 cm.");
    // 3²/5² of the variance stays.
    expect(stdout).toMatch(/^ +4 +0\.50 +36 % /m);
    // (8/3)² = 7.1
    expect(flat(stdout)).toContain("From 8 on, what stays is at least half of the variance");
    expect(flat(stdout)).toContain("below 0.30 cm it never comes");
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("what averaging cannot reach, and what would instead", async () => {
    const { stdout } = await plan("--uncertainty", "5 mm", "--measured-by", "self");
    const text = flat(stdout);
    expect(text).toContain("no number of readings is enough, since 0.71 cm is left however many are taken.");
    const helped = planReadings(
      anticipateError({
        dimension: "torso-length",
        lengthMm: 430,
        stepMm: 1,
        conditions: { tool: "tape", measuredBy: "helper", landmarksFoundAfresh: false },
      }),
      { standardMm: 5 },
    );
    expect(text).toContain(`Another way: ${helped.isReachable ? helped.count : "no"} readings by a helper.`);
    expect(text).toContain("Fetch a helper: that is worth more than anything you can do alone.");
  });

  test("an expanded uncertainty at a probability", async () => {
    const { stdout } = await plan(
      ...["--within", "1 cm", "--probability", "90%", "--per-reading", "8 mm", "--lasting", "3 mm"],
    );
    // z = 1.645: 10/1.645 = 6.079 and 8² / (6.079² - 3²) = 2.29; 1.645 · √(3² + 8²/3) = 9.06
    expect(flat(stdout)).toContain(
      "within 1.00 cm of the truth, with 90.0 %: 3 readings; they bring 0.91 cm.",
    );
  });

  test("a chance of the right size on each chart, with the sample behind it", async () => {
    const { status, stdout } = await plan(
      ...[
        "--chart",
        at("plain.csv"),
        at("other.csv"),
        "--chance",
        "80%",
        "--cut",
        "women",
        "--measured-by",
        "helper",
      ],
    );
    expect(status).toBe(0);
    const text = flat(stdout);
    expect(text).toMatch(
      /For the right size of plain with a chance of 80\.0 %: \d+ readings?; the chance is then 8\d\.\d %\./,
    );
    expect(stdout).toContain("right size 1  right size 2");
    expect(text).toContain("1 plain 2 other");
    expect(text).toContain("Sample: women, 990 people measured.");
    expect(text).toContain("Caveat: ");
  });

  test("says when sizes, or what stays, keep a chance out of reach", async () => {
    const sizes = await plan("--chart", at("plain.csv"), "--chance", "99.99%", "--cut", "women");
    expect(flat(sizes.stdout)).toContain("no number of readings is enough; its sizes are made for");
    const lasting = await plan(
      ...[
        "--chart",
        at("other.csv"),
        "--chance",
        "97%",
        "--cut",
        "women",
        "--per-reading",
        "5 mm",
        "--lasting",
        "20 mm",
      ],
    );
    expect(flat(lasting.stdout)).toContain("with the error that stays it comes to");
  });

  test("a chart that does not size by the dimension is told; others go on", async () => {
    const { status, stderr, stdout } = await plan(
      "--chart",
      at("belts.csv"),
      at("plain.csv"),
      "--chance",
      "80%",
    );
    expect(status).toBe(1);
    expect(stderr).toContain("[plan-chart-without-dimension]");
    expect(stdout).toContain("For the right size of plain");
    const alone = await plan("--chart", at("belts.csv"), "--chance", "80%", "--json");
    expect(alone.status).toBe(1);
    expect(JSON.parse(alone.stdout).issues[0].code).toBe("plan-chart-without-dimension");
  });

  test("prints JSON", async () => {
    const { status, stdout } = await plan(
      ...["--uncertainty", "5 mm", "--chart", at("plain.csv"), "--chance", "80%", "--json"],
    );
    expect(status).toBe(0);
    const answer = JSON.parse(stdout);
    expect(answer.asked).toEqual({
      dimension: "torso-length",
      probability: 0.95,
      uncertainty: 5,
      chance: 0.8,
    });
    expect(answer.uncertainty).toMatchObject({ isReachable: false, reason: "lasting" });
    expect(answer.error.basis).toBe("assumption");
    expect(answer.instead.map(({ helper }: { helper: boolean }) => helper)).toContain(true);
    expect(answer.averaging[0].count).toBe(1);
    expect(answer.charts[0].chances).toHaveLength(answer.averaging.length);
    expect(answer.next.ways[0].way).toBe("helper");
    expect(stdout).not.toContain("null");
  });

  test("another dimension, in inches", async () => {
    const { stdout } = await plan("--dimension", "hip-belt-girth", "--length", "36 in", "--show-unit", "in");
    expect(flat(stdout)).toContain("the hip-belt girth, about 36.00 in long; lengths in in");
    expect(stdout).not.toContain("What is wanted");
  });

  test.each([
    [["--uncertainty", "5"], "[length-no-unit]"],
    [["--chart", "x.csv"], "--chance"],
    [["--chance", "90%"], "--chart"],
    [["--chart", "x.csv", "--chance", "90"], "between 0 and 1"],
    [["--dimension", "hip-belt-girth"], "--length"],
    [["--per-reading", "5 mm"], "--lasting"],
    [["--per-reading", "5 mm", "--lasting", "0", "--tool", "tape"], "--tool"],
    [["--rule-length", "30 cm"], "short-rule"],
    [["--tool", "short-rule", "--rule-length", "1 mm"], "shorter than 10 mm"],
    [["--probability", "0"], "between 0 and 1"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await plan(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
