import { readFileSync } from "node:fs";
import { cutSizes } from "@tapewise/coverage";
import { referencePopulation } from "@tapewise/population";
import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const at = folderWith({});
const cut = (...argv: readonly string[]) => runCommand(["cut", ...argv]);

describe("tapewise cut", () => {
  test("with a span: ranges that serve as many as possible", async () => {
    const { status, stdout, stderr } = await cut("--sizes", "3", "--span", "4 cm", "--cut", "women");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const { ranges, served } = cutSizes({
      population: referencePopulation("women"),
      dimension: "torso-length",
      count: 3,
      goal: "served",
      spanMm: 40,
    });
    for (const { fromMm, toMm } of ranges) {
      expect(stdout).toContain(`${(fromMm / 10).toFixed(1)} to ${(toMm / 10).toFixed(1)}`);
    }
    expect(stdout).toMatch(new RegExp(`^ +3 +${(served * 100).toFixed(1)} % +\\d`, "m"));
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain("to serve as many as possible; lengths in cm");
    expect(text).toContain("Sample: women, 990 people measured.");
    expect(text).toContain("Caveat: Soldiers of 2012");
  });

  test("without a span: fixed lengths as near as possible, and nobody asks whom they serve", async () => {
    const { stdout } = await cut("--sizes", "5", "--cut", "men");
    expect(stdout).toMatch(/^ {5}length +nearest for$/m);
    expect([...stdout.matchAll(/^ {2}[1-5] +\d\d\.\d +[\d.]+ %$/gm)]).toHaveLength(5);
    expect(stdout).not.toContain("served");
  });

  test("the goal, the dimension, the step and the unit can be said", async () => {
    const { stdout } = await cut(
      ...["--sizes", "2", "--span", "2 in", "--goal", "misfit", "--dimension", "hip-girth"],
      ...["--step", "0.5 in", "--show-unit", "in", "--cut", "women"],
    );
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain("2 sizes of 2.00 in for women, cut by hip girth to be as near to everybody");
    expect(text).toContain("with the logarithm of the hip girth");
    for (const [, from] of stdout.matchAll(/(\d+\.\d\d) to /g)) expect((Number(from) * 2) % 1).toBe(0);
  });

  test("prints JSON", async () => {
    const answer = JSON.parse((await cut("--sizes", "2", "--span", "6 cm", "--json")).stdout);
    expect(answer.cut).toBe("both");
    expect(answer.growth).toHaveLength(2);
    expect(answer.ranges[0].toMm - answer.ranges[0].fromMm).toBe(60);
    expect(answer.caveat).toContain("Soldiers");
  });

  test("writes a picture, and says where it cannot", async () => {
    await cut("--sizes", "3", "--span", "6 cm", "--svg", at("cuts.svg"));
    expect(readFileSync(at("cuts.svg"), "utf8")).toMatch(/^<svg .*<\/svg>\n$/s);
    const { status, stderr } = await cut("--sizes", "3", "--svg", at("nowhere/cuts.svg"));
    expect(status).toBe(2);
    expect(stderr).toContain("[file-unwritable]");
  });

  test.each([
    [[], "--sizes 5"],
    [["--sizes", "0"], "whole number from 1 to 20"],
    [["--sizes", "3", "--span", "6"], "[length-no-unit]"],
    [["--sizes", "3", "--span", "0 cm"], "[length-zero]"],
    [["--sizes", "3", "--goal", "served"], "--span"],
    [["--sizes", "3", "--step", "0.001 mm"], "stepMm"],
    [["--sizes", "3", "--dimension", "head"], "torso-length"],
    [["--sizes", "3", "--cut", "youth"], "women, men, both"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await cut(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
