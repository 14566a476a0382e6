import { normalCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";
import {
  normalCdfTable,
  tabledNormalCdf,
} from "../../../packages/afterwards/src/evidence/tabled-normal-cdf.ts";

const cdf = (z: number): number => tabledNormalCdf(normalCdfTable(), z);

test("it is the distribution function within 10⁻¹⁰, at its points, between them and at its ends", () => {
  let worst = 0;
  // A step that meets no point of the table twice in the same place.
  for (let z = -9; z <= 9; z += 0.00037) worst = Math.max(worst, Math.abs(cdf(z) - normalCdf(z)));
  expect(worst).toBeLessThan(1e-10);
  expect([-7, 7, -100, 100, -Infinity, Infinity].map(cdf)).toEqual([0, 1, 0, 1, 0, 1]);
  expect(cdf(0)).toBe(0.5);
  // From memory: Abramowitz & Stegun (1964), table 26.1.
  expect(cdf(1)).toBeCloseTo(0.841344746068543, 9);
  expect(cdf(-1.96)).toBeCloseTo(0.0249978951482204, 9);
});
