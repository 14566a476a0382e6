import { fc, test } from "@fast-check/vitest";
import type { SizeChart } from "@tapewise/charts";
import {
  chooseColumns,
  columnReasons,
  columnVerdicts,
  createChoiceColumns,
  defaultPolicy,
  formBeliefs,
  type Person,
  recommend,
  safeCompileColumns,
  spreadsAfterLooks,
} from "@tapewise/fit";
import type { Estimate } from "@tapewise/measurement";
import { describe, expect } from "vitest";
import { chartOf, sizeOf, usualEstimate } from "../fit/cases.ts";
import { build, charts, estimates, real } from "./fit-arbitraries.ts";

/** Both paths for one person; nothing where columns say that they do not hold the chart. */
function both(person: Person, chart: SizeChart) {
  const outcome = recommend(person, chart, { unit: "cm" });
  const beliefs = formBeliefs(person.estimates, person.prior);
  const plan = safeCompileColumns(chart, {
    read: person.estimates.map(({ dimension }) => dimension),
    ...(person.prior === undefined ? {} : { prior: person.prior.dimensions }),
    ...(person.cut === undefined ? {} : { cut: person.cut }),
  });
  if (!plan.ok || !outcome.ok) return { outcome, plan };
  const known = plan.value.beliefs.flatMap((dimension) => beliefs.of(dimension) ?? []);
  const out = createChoiceColumns(1, plan.value.sizes.length);
  const isQuestioned = known.some((belief) =>
    outcome.issues.some((issue) => issue.path.at(-1) === belief.dimension),
  );
  chooseColumns(
    plan.value,
    {
      meansMm: Float64Array.from(known, (belief) => belief.meanMm),
      sdsMm: Float64Array.from(known, (belief) => belief.sdMm),
      degreesOfFreedom: Float64Array.from(known, (belief) => belief.degreesOfFreedom),
      afterLooksMm: Float64Array.from(known.flatMap((belief) => spreadsAfterLooks(belief, defaultPolicy))),
      hasBuild: Uint8Array.of((person.build ?? []).length > 0 ? 1 : 0),
      isQuestioned: Uint8Array.of(isQuestioned ? 1 : 0),
    },
    out,
  );
  return { outcome, plan, out };
}

function expectSame(person: Person, chart: SizeChart): void {
  const { outcome, plan, out } = both(person, chart);
  expect(plan.ok).toBe(outcome.ok);
  if (!plan.ok || !outcome.ok || out === undefined) return;
  const { pick, verdict, probability, sizes, reasons, unjudgedSizes } = outcome.value;
  expect(plan.value.sizes).toEqual(sizes.map(({ size }) => size));
  expect(plan.value.unjudgedSizes).toEqual(unjudgedSizes);
  // To a relative 10⁻¹² of the misfit, and of a chance of 1.
  sizes.forEach((size, k) => {
    const misfit = out.sizeMisfitsMm?.[k] ?? Number.NaN;
    expect(Math.abs((out.sizeProbabilities?.[k] ?? Number.NaN) - size.probability)).toBeLessThan(1e-12);
    expect(Math.abs(misfit - size.expectedMisfitMm)).toBeLessThan(
      1e-12 * Math.max(100, size.expectedMisfitMm),
    );
  });
  if (out.isClose[0] === 1) return;
  expect(plan.value.sizes[out.pick[0] ?? -1]).toBe(pick);
  expect(columnVerdicts[out.verdict[0] ?? -1]).toBe(verdict);
  expect(Math.abs((out.probability[0] ?? Number.NaN) - probability)).toBeLessThan(1e-12);
  const told = columnReasons.filter((_, bit) => ((out.reasons[0] ?? 0) >> bit) & 1);
  expect(new Set(told)).toEqual(new Set(reasons.map(({ code }) => code)));
}

/** A chart as people print them: steps of half a centimetre, and sizes that follow each other. */
const printed = fc
  .record({
    first: fc.integer({ min: 60, max: 84 }),
    steps: fc.array(fc.integer({ min: 2, max: 9 }), { minLength: 1, maxLength: 7 }),
    overlap: fc.integer({ min: -2, max: 4 }),
    harness: fc.constantFrom("fixed" as const, "adjustable" as const, undefined),
    hasBelt: fc.boolean(),
  })
  .map(({ first, steps, overlap, harness, hasBelt }) => {
    let from = first * 5;
    const sizes = steps.map((step, k) => {
      const to = from + step * 5 + Math.max(0, overlap) * 5;
      const belt = [600 + 60 * k, 820 + 70 * k] as const;
      const row = { "torso-length": [from, to] as const, ...(hasBelt ? { "hip-belt-girth": belt } : {}) };
      from += step * 5 - Math.min(0, overlap) * 5;
      const more = { capacityLitres: 40 + 3 * k };
      return sizeOf(`size ${k}`, row, k % 2 === 0 || harness === undefined ? more : { ...more, harness });
    });
    return chartOf(sizes, { harness: "fixed" });
  });

const taken = fc
  .record({
    torso: fc.array(fc.integer({ min: 360, max: 500 }), { minLength: 1, maxLength: 5 }),
    belt: fc.array(fc.integer({ min: 700, max: 1150 }), { minLength: 0, maxLength: 3 }),
    by: fc.constantFrom("self" as const, "helper" as const),
    tool: fc.constantFrom("tape" as const, "cord-and-ruler" as const),
  })
  .map(({ torso, belt, by, tool }): readonly Estimate[] => {
    const near = (list: readonly number[]) => list.map((mm) => `${(list[0] ?? mm) + (mm % 9)} mm`);
    return [
      usualEstimate("torso-length", near(torso), { measuredBy: by, tool }),
      ...(belt.length === 0 ? [] : [usualEstimate("hip-belt-girth", near(belt), { measuredBy: by, tool })]),
    ];
  });

describe("columns", () => {
  test.prop([charts, estimates, build], { numRuns: 2000 })(
    "law: columns answer as recommend does, whatever the chart",
    (chart, list, features) => expectSame({ estimates: list, build: features }, chart),
  );

  test.prop([printed, taken, build], { numRuns: 1500 })(
    "law: columns answer as recommend does on charts and readings as people write them, looks included",
    (chart, list, features) => expectSame({ estimates: list, build: features, cut: "women" }, chart),
  );

  test.prop([printed, taken, real(380, 470), real(10, 40)], { numRuns: 600 })(
    "law: columns answer as recommend does where a prior speaks of one dimension",
    (chart, list, mean, sd) => {
      const prior = {
        label: "people of a test",
        source: "made up",
        caveat: "none",
        dimensions: ["torso-length" as const],
        meanMm: [mean],
        covarianceMm2: [[sd * sd]],
      };
      expectSame({ estimates: list, prior }, chart);
    },
  );
});
