import { createEvidence, learnMaker, learnProduct } from "@tapewise/afterwards";
import { expect, test } from "vitest";
import { add, ofM } from "./gingham.ts";

test("many products that are off alike tell of their maker, more surely than one", () => {
  const short = { ...ofM, side: "above", meanMm: 460 } as const;
  const one = createEvidence();
  add(one, short, 60);
  const five = createEvidence();
  for (let i = 0; i < 5; i += 1) add(five, { ...short, product: `Doily ${i}` }, 12);
  const [narrow, wide] = [
    learnMaker(five, "Gingham", "torso-length"),
    learnMaker(one, "Gingham", "torso-length"),
  ];
  expect([narrow.outcomes, wide.outcomes]).toEqual([60, 60]);
  expect(narrow.offsetMm.sd).toBeLessThan(wide.offsetMm.sd);
  expect(narrow.offsetMm.upper).toBeLessThan(0);
});

test("products that are off in opposite ways leave their maker near 0", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, product: "long", side: "below", meanMm: 450 }, 30);
  add(evidence, { ...ofM, product: "short", side: "above", meanMm: 460 }, 30);
  const maker = learnMaker(evidence, "Gingham", "torso-length");
  expect(maker.offsetMm.mean).toBeCloseTo(0, 6);
  expect(learnProduct(evidence, { ...ofM, product: "long" }, "torso-length").offsetMm.lower).toBeGreaterThan(
    0,
  );
});

test("a maker of whom nothing is known scatters as assumed: 17 mm, cut off at 45 mm", () => {
  const { offsetMm, outcomes } = learnMaker(createEvidence(), "Gingham", "torso-length");
  expect(outcomes).toBe(0);
  // With half a step 45.75/17 = 2.691, φ(2.691) = 0.01067 and 0.9929 between the ends (from memory: Abramowitz & Stegun,
  // 1964, table 26.1).
  expect(offsetMm.sd).toBeCloseTo(17 * Math.sqrt(1 - (2 * 2.691 * 0.01067) / 0.9929), 1);
});
