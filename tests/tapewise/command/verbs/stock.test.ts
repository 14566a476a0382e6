import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": "size,torso-length (cm)\nS,34-41\nM,40-47\n",
  "other.csv": "size,torso-length (cm)\nL,40-50\n",
  "neck.csv": "size,neck-base-girth (cm)\nS,38-43\n",
});
const stock = (...argv: readonly string[]) => runCommand(["stock", ...argv]);
const forty = ["--members", "40", "--chance", "0.95", "--cut", "women"] as const;

describe("tapewise stock", () => {
  test("says how many of each size, with the chance and what it rests on", async () => {
    const { status, stdout, stderr } = await stock("--chart", at("plain.csv"), ...forty);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const total = Number(/^plain: (\d+) packs for 40 members \(women\)$/m.exec(stdout)?.[1]);
    const counts = [...stdout.matchAll(/^ {2}[SM] +(\d+) +[\d.]+ %$/gm)].map(([, count]) => Number(count));
    expect(counts).toHaveLength(2);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(total);
    expect(total).toBeGreaterThanOrEqual(40);
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toMatch(/goes without with a chance of 9[5-9]\.\d % \(asked: 95\.0 %\)/);
    expect(text).toContain("Tried on 1000 crews drawn at random");
    expect(text).toContain("Sample: women, 990 people measured.");
    expect(text).toContain("Caveat: Soldiers of 2012");
  });

  test("each size by itself takes more packs", async () => {
    const totals = await Promise.all(
      ["flexible", "each-size"].map(async (rule) => {
        const { stdout } = await stock("--chart", at("plain.csv"), ...forty, "--rule", rule, "--json");
        return JSON.parse(stdout).charts[0].total;
      }),
    );
    expect(totals[1]).toBeGreaterThan(totals[0]);
  });

  test("prints JSON, a chart at a time", async () => {
    const { stdout } = await stock("--chart", at("plain.csv"), at("other.csv"), ...forty, "--json");
    const answer = JSON.parse(stdout);
    expect(answer.charts.map(({ chart }: { chart: string }) => chart)).toEqual(["plain", "other"]);
    expect(answer.chanceAsked).toBe(0.95);
    for (const { chance, tried, shares, unserved } of answer.charts) {
      expect(chance).toBeGreaterThanOrEqual(0.95);
      expect(tried.enough).toBeGreaterThan(0.9);
      const people = shares.reduce((sum: number, size: { ofPeople: number }) => sum + size.ofPeople, 0);
      expect(people + unserved).toBeCloseTo(1, 9);
    }
  });

  test("a chart that cannot be judged is an issue, and the others go on", async () => {
    const alone = await stock("--chart", at("neck.csv"), ...forty);
    expect([alone.status, alone.stdout]).toEqual([1, ""]);
    expect(alone.stderr).toContain("[coverage-nothing-judged]");
    const beside = await stock("--chart", at("neck.csv"), at("other.csv"), ...forty);
    expect(beside.status).toBe(1);
    expect(beside.stdout).toMatch(/^other: \d+ packs/m);
  });

  test.each([
    [["--members", "40", "--chance", "0.9"], "--chart"],
    [["--chart", at("plain.csv"), "--chance", "0.9"], "--members 40"],
    [["--chart", at("plain.csv"), "--members", "40"], "--chance 0.95"],
    [["--chart", at("plain.csv"), "--members", "4.5", "--chance", "0.9"], "whole number from 1 to 2000"],
    [["--chart", at("plain.csv"), "--members", "0", "--chance", "0.9"], "whole number from 1 to 2000"],
    [["--chart", at("plain.csv"), "--members", "40", "--chance", "95"], "between 0 and 1"],
    [["--chart", at("plain.csv"), "--members", "40", "--chance", "0.0"], "between 0 and 1"],
    [["--chart", at("plain.csv"), "--members", "4", "--chance", "0.9", "--rule", "x"], "each-size"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await stock(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
