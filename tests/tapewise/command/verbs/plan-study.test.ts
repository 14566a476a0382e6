import { describe, expect, test } from "vitest";
import { runCommand } from "../../run-command.ts";

const plan = (...argv: readonly string[]) => runCommand(["plan-study", ...argv]);
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("tapewise plan-study", () => {
  test("limits of agreement, by hand: 3 · 1.96² · 10² / 3.4² = 99.7", async () => {
    const { status, stdout, stderr } = await plan("--difference-sd", "1 cm", "--limits-within", "3.4 mm");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(flat(stdout)).toContain("100 subjects: limits of agreement are then known to about 3.4 mm");
  });

  test("an intraclass correlation, by hand", async () => {
    // 8 z² (1 - ρ)² (1 + ρ)² / (2 w²) + 1 + 5ρ = 8 · 3.8415 · 0.19² / 0.02 + 5.5 = 60.97
    const width = await plan("--icc", "0.9", "--icc-width", "0.1");
    expect(flat(width.stdout)).toContain("61 subjects: the interval of an intraclass correlation of 0.9");
    // S. D. Walter, M. Eliasziw & A. Donner (1998): 1 + 2k (zα + zβ)² / ((k - 1) ln²C), with C = (1 + 3)/(1 + 9) for
    // k = 3, least 0.5 and expected 0.75: 1 + 6 · 6.1826 / (2 · 0.83959) = 23.09
    const least = await plan("--icc", "0.75", "--icc-least", "0.5", "--repeats", "3");
    expect(flat(least.stdout)).toContain("24 subjects: an intraclass correlation of 0.75");
    const surer = await plan(
      "--icc",
      "0.75",
      "--icc-least",
      "0.5",
      "--repeats",
      "3",
      "--power",
      "95%",
      "--json",
    );
    expect(JSON.parse(surer.stdout).subjectsNeeded).toBeGreaterThan(24);
  });

  test("a technical error, forwards and backwards", async () => {
    const { stdout } = await plan("--precision", "75%", "--subjects", "11");
    expect(flat(stdout)).toContain("11 subjects: the interval of the technical error then ends at most 75 %");
    // Quantiles of χ² with 11 degrees of freedom, from tables: 3.816 and 21.920.
    expect(flat(stdout)).toContain(
      `known from ${Math.sqrt(11 / 21.92).toFixed(2)} to ${Math.sqrt(11 / 3.816).toFixed(2)} times`,
    );
  });

  test("several wishes take the largest number, also in JSON", async () => {
    const wishes = ["--precision", "75%", "--difference-sd", "10 mm", "--limits-within", "3.4 mm"];
    expect(flat((await plan(...wishes)).stdout)).toContain("All of it takes 100 subjects.");
    const answer = JSON.parse((await plan(...wishes, "--json")).stdout);
    expect(answer.subjectsNeeded).toBe(100);
    expect(answer.wishes.map((wish: { for: string }) => wish.for)).toEqual(["technical-error", "limits"]);
  });

  test.each([
    [[], "--precision 20%"],
    [["--icc", "0.9"], "--icc-width or --icc-least"],
    [["--icc-width", "0.1"], "--icc goes with"],
    [["--difference-sd", "8 mm"], "--limits-within"],
    [["--icc", "0.7", "--icc-least", "0.8"], "above 0.8"],
    [["--repeats", "1", "--precision", "20%"], "from 2 to 1000"],
    [["--precision", "0.0000001%"], "precision"],
    [["--subjects", "0"], "from 1 to"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await plan(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
