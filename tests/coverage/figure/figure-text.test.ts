import { describeSample, writeShare } from "@tapewise/coverage";
import { InvalidArgumentError } from "@tapewise/outcome";
import { referenceMixture } from "@tapewise/population";
import { expect, test } from "vitest";
import { crew } from "../crew.ts";

test("only nobody is 0 %, and only everybody 100 %", () => {
  const shares = [0, 1e-6, 0.0004, 0.0006, 0.125, 0.9994, 0.99999, 1];
  expect(shares.map(writeShare)).toEqual([
    "0.0 %",
    "under 0.1 %",
    "under 0.1 %",
    "0.1 %",
    "12.5 %",
    "99.9 %",
    "over 99.9 %",
    "100.0 %",
  ]);
  for (const wrong of [-0.1, 1.1, Number.NaN]) expect(() => writeShare(wrong)).toThrow(InvalidArgumentError);
});

test("a sample says how many were measured, or that nobody said so", () => {
  expect(describeSample(crew(), 120)).toBe("an invented crew, 120 people measured");
  expect(describeSample(crew(), undefined)).toBe("an invented crew, number of people measured not stated");
  expect(describeSample(referenceMixture({ women: 1, men: 3 }), [990, 2040])).toBe(
    "adults of unknown sex: 25.0 % women (990 people measured), 75.0 % men (2040 people measured)",
  );
});
