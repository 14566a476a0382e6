import { createEvidence, expectedMove, type LearnedChart, learnProduct } from "@tapewise/afterwards";
import { expect, test } from "vitest";
import { add, ofM } from "./gingham.ts";

const known = (mean: number, sd: number) => ({ mean, sd, lower: mean - sd, upper: mean + sd });
const learned: LearnedChart = {
  outcomes: 30,
  offsetMm: known(10, 3),
  widthFactor: known(1.2, 0.1),
  covarianceMm: 0.06,
  asPrintedProbability: 0.2,
};

test("offset and factor over both possibilities: mean, spread and what they have in common", () => {
  const move = expectedMove(learned);
  // Off with 0.8. Offset: 0.8·10 = 8; 0.8·9 + 0.8·0.2·100 = 23.2. Factor: 1 + 0.8·0.2 = 1.16; 0.8·0.01 + 0.16·0.04 = 0.0144.
  expect(move.offsetMm).toBeCloseTo(8, 12);
  expect(move.offsetSdMm).toBeCloseTo(Math.sqrt(23.2), 12);
  expect(move.widthFactor).toBeCloseTo(1.16, 12);
  expect(move.widthSd).toBeCloseTo(0.12, 12);
  // 0.8·0.06 + 0.16·10·0.2 = 0.368.
  expect(move.covarianceMm).toBeCloseTo(0.368, 12);
});

test("charts that are surely as printed do not move, and surely moved ones move by what was learned", () => {
  expect(expectedMove({ ...learned, asPrintedProbability: 1 })).toEqual({
    offsetMm: 0,
    offsetSdMm: 0,
    widthFactor: 1,
    widthSd: 0,
    covarianceMm: 0,
  });
  expect(expectedMove({ ...learned, asPrintedProbability: 0 })).toMatchObject({
    offsetMm: 10,
    offsetSdMm: 3,
  });
});

test("with outcomes that say the same the doubt about an offset falls", () => {
  const doubtAfter = (outcomes: number): number => {
    const evidence = createEvidence();
    add(evidence, { ...ofM, side: "below", meanMm: 441 }, outcomes);
    return expectedMove(learnProduct(evidence, ofM, "torso-length")).offsetSdMm;
  };
  const doubts = [0, 30, 300].map(doubtAfter);
  expect(doubts).toEqual(doubts.toSorted((a, b) => b - a));
  expect(doubts[2]).toBeLessThan((doubts[0] ?? 0) / 2);
});
