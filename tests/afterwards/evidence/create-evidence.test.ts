import { createEvidence, evidenceDefaults, learnProduct, type ProductKey } from "@tapewise/afterwards";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalCdf } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { add, ofM } from "./gingham.ts";

const tableOf = (evidence: ReturnType<typeof createEvidence>) => evidence.tablesOf(ofM, "torso-length")[0];

test("one outcome: the logarithm of its probability, in units of 2⁻²⁶", () => {
  const evidence = createEvidence();
  evidence.add({ ...ofM, side: "below", meanMm: 441, sdMm: 6 });
  const units = tableOf(evidence)?.units;
  // In the middle of the table the chart is as printed. σ is √(6² + 8²) = 10 mm and the end lies 11 mm below the mean.
  const p = 0.98 * normalCdf(-1.1) + 0.02 / 3;
  expect((units?.[(units.length - 1) / 2] ?? 0) / 2 ** 26).toBeCloseTo(Math.log(p), 7);
  expect(units?.every(Number.isInteger)).toBe(true);
});

test("taking an outcome out leaves nothing of it", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, meanMm: 447.3 }, 3);
  const before = tableOf(evidence)?.units;
  evidence.add({ ...ofM, side: "above", meanMm: 476.1, sdMm: 9.7 });
  evidence.remove({ ...ofM, side: "above", meanMm: 476.1, sdMm: 9.7 });
  expect(tableOf(evidence)?.units).toEqual(before);
  for (let i = 0; i < 3; i += 1) evidence.remove({ ...ofM, meanMm: 447.3 });
  expect(evidence.tablesOf(ofM, "torso-length")).toEqual([]);
});

test("makers, products and dimensions are kept apart", () => {
  const evidence = createEvidence();
  evidence.add(ofM);
  evidence.add({ ...ofM, product: "Accordion 55" });
  evidence.add({ ...ofM, maker: "Marmalade" });
  evidence.add({ ...ofM, dimension: "hip-belt-girth" });
  const { maker: _, ...nameless } = ofM;
  evidence.add(nameless);
  expect(evidence.tablesOf(ofM, "torso-length").map(({ key }) => key.product)).toEqual([
    "Accordion 55",
    "Doily 45",
  ]);
  expect(evidence.tablesOf({ product: "Doily 45" }, "torso-length")).toHaveLength(1);
  expect(evidence.tablesOf({ product: "Accordion 55" }, "torso-length")).toHaveLength(0);
});

test("what is given out is a copy", () => {
  const evidence = createEvidence();
  evidence.add(ofM);
  tableOf(evidence)?.units.fill(0);
  expect(tableOf(evidence)?.units.some((unit) => unit !== 0)).toBe(true);
});

describe("mistakes of the program", () => {
  test.each([
    { fromMm: 480, toMm: 430 },
    { meanMm: Number.NaN },
    { sdMm: -1 },
    { side: "beside" as "below" },
    { fromMm: Number.NaN },
  ])("%j is no outcome", (wrong) => {
    expect(() => createEvidence().add({ ...ofM, ...wrong })).toThrow(InvalidArgumentError);
  });

  test("what never came cannot be taken out", () => {
    expect(() => createEvidence().remove(ofM)).toThrow(InvalidArgumentError);
  });

  // The range of M begins at 430 mm: a body at 441 that found it too long, and one at 470 that found it too short.
  test.each([
    [1, "the last one"],
    [2, "one of several"],
  ])("of %i outcomes, another one than came cannot be taken out: %s", (count) => {
    const evidence = createEvidence();
    const below = { ...ofM, side: "below", meanMm: 441, sdMm: 6 } as const;
    add(evidence, below, count);
    const before = tableOf(evidence);
    expect(() => evidence.remove({ ...below, side: "above", meanMm: 470 })).toThrow(InvalidArgumentError);
    expect(tableOf(evidence)).toEqual(before);
    for (let i = 0; i < count; i += 1) evidence.remove(below);
    expect(evidence.tablesOf(ofM, "torso-length")).toEqual([]);
  });

  test("the product of a row of the log is no key", () => {
    const product: { maker: string; chart: string } = { maker: "Gingham", chart: "Doily 45" };
    const key = product as unknown as ProductKey;
    const evidence = createEvidence();
    expect(() => evidence.tablesOf(key, "torso-length")).toThrow("key.product ");
    expect(() => learnProduct(evidence, key, "torso-length")).toThrow(InvalidArgumentError);
    const { product: _, ...nameless } = ofM;
    expect(() => evidence.add(nameless as typeof ofM)).toThrow("seen.product ");
    expect(() => evidence.add({ ...ofM, maker: 7 as unknown as string })).toThrow("seen.maker ");
  });

  test.each([
    { slipProbability: 0 },
    { asPrintedProbability: 1 },
    { sureProbability: Number.NaN },
    { girth: { ...evidenceDefaults.girth, toleranceMm: 0 } },
  ])("%j is no model", (wrong) => {
    expect(() => createEvidence({ ...evidenceDefaults, ...wrong })).toThrow(InvalidArgumentError);
  });
});
