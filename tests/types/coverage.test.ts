import type { SizeChart } from "@tapewise/charts";
import {
  type ChoiceErrors,
  type Coverage,
  type CutRequest,
  chartCoverage,
  choiceErrors,
  cutSizes,
  type SizeCuts,
  type Stock,
  stockFor,
} from "@tapewise/coverage";
import type { Outcome } from "@tapewise/outcome";
import {
  type JointModel,
  type normalJoint,
  referenceMixture,
  referencePopulation,
} from "@tapewise/population";
import { expect, expectTypeOf, test } from "vitest";

const women = referencePopulation("women");
const chart: SizeChart = { chart: "Doily 45", swappable: [], belts: [], sizes: [] };

test("what depends on a chart is an outcome, what depends on the program alone is a value", () => {
  expectTypeOf(chartCoverage).returns.toEqualTypeOf<Outcome<Coverage>>();
  expectTypeOf(stockFor).returns.toEqualTypeOf<Outcome<Stock>>();
  expectTypeOf(choiceErrors).returns.toEqualTypeOf<Outcome<ChoiceErrors>>();
  expectTypeOf(cutSizes).returns.toEqualTypeOf<SizeCuts>();
  expect(chartCoverage(chart, women).ok).toBe(false);
});

test("any joint model is a population, and so is a mixture", () => {
  expectTypeOf<ReturnType<typeof normalJoint>>().toExtend<JointModel>();
  expect(chartCoverage([chart], referenceMixture({ women: 1, men: 1 })).ok).toBe(false);
  // @ts-expect-error a cut is no population
  expect(() => chartCoverage(chart, "women")).toThrow();
});

test("to serve as many as possible needs a span, and there is no other goal", () => {
  const basis = { population: women, dimension: "torso-length", count: 2 } as const;
  expectTypeOf<{ goal: "served"; spanMm: number } & typeof basis>().toExtend<CutRequest>();
  expectTypeOf<{ goal: "misfit" } & typeof basis>().toExtend<CutRequest>();
  // @ts-expect-error served by ranges of what length?
  expect(() => cutSizes({ ...basis, goal: "served" })).toThrow();
  // @ts-expect-error best in what way?
  expect(() => cutSizes({ ...basis, goal: "best", spanMm: 40 })).toThrow();
});

test("a stock is for a number of members, with a chance", () => {
  // @ts-expect-error nobody assumes a chance
  expect(() => stockFor(chart, women, { members: 40 })).toThrow();
  // @ts-expect-error there is no other rule
  expect(stockFor(chart, women, { members: 40, chance: 0.9, rule: "cheap" }).ok).toBe(false);
});

test("how people measure is stated, not assumed", () => {
  // @ts-expect-error how many readings?
  expect(choiceErrors(chart, women, { conditions: {}, stepMm: 5 }).ok).toBe(false);
});

test("answers cannot be changed", () => {
  const cuts = cutSizes({ population: women, dimension: "stature", count: 1, goal: "misfit", stepMm: 10 });
  const copy: SizeCuts = { ...cuts };
  // @ts-expect-error shares are read only
  copy.served = 1;
  // @ts-expect-error so are their lists
  expect(typeof cuts.growth.push).toBe("function");
});
