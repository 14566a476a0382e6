import { createEvidence, evidenceDefaults, learnProduct, type SeenOutcome } from "@tapewise/afterwards";
import { normalIntervalProbability } from "@tapewise/statistics";
import { expect, test } from "vitest";
import { add, ofM } from "./gingham.ts";

const learn = (outcomes: readonly SeenOutcome[]) => {
  const evidence = createEvidence();
  for (const one of outcomes) evidence.add(one);
  return learnProduct(evidence, ofM, "torso-length");
};

test("without outcomes there is what is assumed of makers and of their products", () => {
  const { outcomes, offsetMm, widthFactor, asPrintedProbability } = learn([]);
  expect(outcomes).toBe(0);
  expect(offsetMm.mean).toBeCloseTo(0, 9);
  expect(widthFactor.mean).toBeCloseTo(1, 9);
  // √(17² + 10²) = 19.72, cut off at 45 mm and half a step of 1.5 mm, which are 2.320 of them. With φ(2.320) = 0.02705 and
  // 0.9797 between the ends (from memory: Abramowitz & Stegun, 1964, table 26.1) the variance is
  // 1 − 2·2.320·0.02705/0.9797 = 0.872 of the whole, and 0.45 of what lies between the ends is reached at 1.562.
  expect(offsetMm.sd).toBeCloseTo(19.72 * Math.sqrt(0.872), 1);
  expect(offsetMm.upper).toBeCloseTo(1.562 * 19.72, 1);
  expect(asPrintedProbability).toBe(0.5);
});

test("the offset is the one of the posterior, integrated anew and point by point", () => {
  const seen = [
    { ...ofM, side: "above", meanMm: 468, sdMm: 6 },
    { ...ofM, side: "above", meanMm: 462, sdMm: 9 },
    { ...ofM, side: "inside", meanMm: 451, sdMm: 7 },
    { ...ofM, side: "below", meanMm: 436, sdMm: 8 },
  ] as const;
  const { backLength: scale, slipProbability: slip } = evidenceDefaults;
  const [sd, logSd] = [Math.hypot(17, 10), Math.hypot(0.14, 0.09)];
  let [total, first, second] = [0, 0, 0];
  // The outermost points stand for what lies up to 45.75 mm.
  for (let offset = -45.5; offset <= 45.5; offset += 0.5) {
    for (let log = -0.5; log <= 0.5; log += 0.01) {
      const half = 25 * Math.exp(log);
      let weight = Math.exp(-0.5 * ((offset / sd) ** 2 + (log / logSd) ** 2));
      for (const { side, meanMm, sdMm } of seen) {
        const sigma = Math.hypot(sdMm, scale.toleranceMm);
        const [from, to] = [(455 + offset - half - meanMm) / sigma, (455 + offset + half - meanMm) / sigma];
        const ends = { below: [-Infinity, from], inside: [from, to], above: [to, Infinity] } as const;
        weight *= (1 - slip) * normalIntervalProbability(...ends[side]) + slip / 3;
      }
      total += weight;
      first += weight * offset;
      second += weight * offset * offset;
    }
  }
  const { offsetMm } = learn(seen);
  expect(offsetMm.mean).toBeCloseTo(first / total, 2);
  expect(offsetMm.sd).toBeCloseTo(Math.sqrt(second / total - (first / total) ** 2), 2);
});

test("three exchanges do not overturn a chart, and thirty do", () => {
  const evidence = createEvidence();
  // The body is believed to be 6 mm within the longer end; its pack is said to be too short.
  const short = { ...ofM, side: "above", meanMm: 474, sdMm: 8 } as const;
  add(evidence, short, 3);
  const few = learnProduct(evidence, ofM, "torso-length");
  expect(few.offsetMm.upper - few.offsetMm.lower).toBeGreaterThan(25);
  expect(few.asPrintedProbability).toBeGreaterThan(0.05);
  add(evidence, short, 27);
  const many = learnProduct(evidence, ofM, "torso-length");
  expect(many.offsetMm.mean).toBeLessThan(few.offsetMm.mean - 5);
  expect(many.asPrintedProbability).toBeLessThan(0.001);
});

test("too long below and too short above: the range is narrower than printed, and not off", () => {
  const outcomes = [436, 474].flatMap((meanMm) =>
    Array.from({ length: 30 }, () => ({ ...ofM, side: meanMm < 455 ? "below" : "above", meanMm }) as const),
  );
  const { offsetMm, widthFactor } = learn(outcomes);
  expect(offsetMm.mean).toBeCloseTo(0, 6);
  expect(widthFactor.upper).toBeLessThan(1);
});

test("another product of the maker is told by the first, less and less surely", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "above", meanMm: 460 }, 60);
  const own = learnProduct(evidence, ofM, "torso-length").offsetMm;
  const other = learnProduct(evidence, { ...ofM, product: "Accordion 55" }, "torso-length");
  expect(other.outcomes).toBe(0);
  expect(other.offsetMm.mean).toBeLessThan(-5);
  expect(other.offsetMm.mean).toBeGreaterThan(own.mean);
  expect(other.offsetMm.sd).toBeGreaterThan(own.sd);
  const foreign = learnProduct(evidence, { maker: "Marmalade", product: "Doily 45" }, "torso-length");
  expect(foreign.offsetMm.mean).toBeCloseTo(0, 9);
});

test("an open end tells nothing of a width", () => {
  const open = { ...ofM, fromMm: 480, toMm: Number.POSITIVE_INFINITY, side: "below", meanMm: 500 } as const;
  const { offsetMm, widthFactor } = learn(Array.from({ length: 20 }, () => open));
  expect(offsetMm.mean).toBeGreaterThan(10);
  expect(widthFactor.mean).toBeCloseTo(1, 6);
});
