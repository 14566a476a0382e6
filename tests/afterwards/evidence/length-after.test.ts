import { createEvidence, evidenceDefaults, lengthAfter } from "@tapewise/afterwards";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalIntervalProbability } from "@tapewise/statistics";
import { expect, test } from "vitest";
import { ofM } from "./gingham.ts";

test.each(["below", "inside", "above"] as const)(
  "the length after %s is the posterior, integrated point by point",
  (side) => {
    const seen = { ...ofM, side, meanMm: 471, sdMm: 9 };
    const { toleranceMm, makerOffsetSdMm, productOffsetSdMm } = evidenceDefaults.backLength;
    // Nothing is known of the maker: half a chance that it prints as it cuts, and else an offset about 0. Cut off at
    // 45 mm, 0.872 of the variance is left (see the test of learnProduct).
    const offsetVariance = 0.5 * 0.872 * (makerOffsetSdMm ** 2 + productOffsetSdMm ** 2);
    const noise = Math.sqrt(toleranceMm ** 2 + offsetVariance);
    const ends = { below: [-Infinity, 430], inside: [430, 480], above: [480, Infinity] } as const;
    let [total, first, second] = [0, 0, 0];
    for (let x = 400; x <= 540; x += 0.25) {
      const [from, to] = ends[side];
      const told = 0.98 * normalIntervalProbability((from - x) / noise, (to - x) / noise) + 0.02 / 3;
      const weight = told * Math.exp(-0.5 * ((x - 471) / 9) ** 2);
      total += weight;
      first += weight * x;
      second += weight * x * x;
    }
    const after = lengthAfter(createEvidence(), seen);
    expect(after.meanMm).toBeCloseTo(first / total, 1);
    expect(after.sdMm).toBeCloseTo(Math.sqrt(second / total - (first / total) ** 2), 1);
    expect(after.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  },
);

test("what is known exactly, and what cannot be, teaches nothing", () => {
  const evidence = createEvidence();
  expect(lengthAfter(evidence, { ...ofM, sdMm: 0 })).toMatchObject({ meanMm: 455, sdMm: 0 });
  const far = lengthAfter(evidence, { ...ofM, side: "below", meanMm: 3000, sdMm: 1 });
  expect([far.meanMm, far.sdMm]).toEqual([3000, 1]);
});

test.each([{ side: "under" as "below" }, { sdMm: -3 }, { meanMm: Number.NaN }, { fromMm: 500, toMm: 480 }])(
  "%o is no outcome",
  (fault) => {
    expect(() => lengthAfter(createEvidence(), { ...ofM, ...fault })).toThrow(InvalidArgumentError);
  },
);
