import { fc } from "@fast-check/vitest";
import type { Size, SizeChart } from "@tapewise/charts";
import { buildFeatures } from "@tapewise/fit";
import { atLeast, atMost, everything, type Interval, interval, point } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate, Prior } from "@tapewise/measurement";
import { chartOf, estimateOf, sizeOf, sureEstimate } from "../fit/cases.ts";

/** A real number between two others, both ends included. */
export function real(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

/** Lengths of backs in mm, wider than people have them. */
export const bodyMm: fc.Arbitrary<number> = real(300, 600);

export const sdMm: fc.Arbitrary<number> = real(0.5, 40);

export const degrees: fc.Arbitrary<number> = fc.oneof(real(1.5, 60), fc.constant(Number.POSITIVE_INFINITY));

export const bounded: fc.Arbitrary<Interval> = fc
  .tuple(real(300, 600), real(0.1, 120))
  .map(([from, width]) => interval(from, from + width));

/** Also points, open ends, and the whole line. */
export const anyRange: fc.Arbitrary<Interval> = fc.oneof(
  { weight: 6, arbitrary: bounded },
  { weight: 1, arbitrary: bodyMm.map((at) => point(at)) },
  { weight: 1, arbitrary: bodyMm.map((from) => atLeast(from)) },
  { weight: 1, arbitrary: bodyMm.map((to) => atMost(to)) },
  { weight: 1, arbitrary: fc.constant(everything) },
);

const NAMES = ["XS", "S", "M", "L", "XL"];

/** Sizes of one to five rows that state the torso length and perhaps the hip-belt girth. */
const sizes: fc.Arbitrary<readonly Size[]> = fc
  .array(
    fc.record({
      torso: anyRange,
      belt: fc.option(
        anyRange.map((range) => shiftInterval(range, 450)),
        { nil: undefined },
      ),
      litres: fc.option(fc.integer({ min: 30, max: 70 }), { nil: undefined }),
      harness: fc.option(fc.constantFrom("adjustable" as const, "fixed" as const), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((rows) =>
    rows.map(({ torso, belt, litres, harness }, i) =>
      sizeOf(
        NAMES[i] ?? String(i),
        { "torso-length": torso, ...(belt === undefined ? {} : { "hip-belt-girth": belt }) },
        {
          ...(litres === undefined ? {} : { capacityLitres: litres }),
          ...(harness === undefined ? {} : { harness }),
        },
      ),
    ),
  );

export const charts: fc.Arbitrary<SizeChart> = fc
  .record({ sizes, swapsBelt: fc.boolean() })
  .map((one) => chartOf(one.sizes, { swappable: one.swapsBelt ? ["hip-belt"] : [] }));

/** Torso length and perhaps the hip-belt girth, with any uncertainty, none included. */
export const estimates: fc.Arbitrary<readonly Estimate[]> = fc
  .tuple(
    fc.tuple(bodyMm, fc.oneof(fc.constant(0), sdMm), degrees),
    fc.option(fc.tuple(real(750, 1050), sdMm, degrees)),
    fc.boolean(),
  )
  .map(([torso, belt, turned]) => {
    const list = [
      sureEstimate("torso-length", ...torso),
      ...(belt === null ? [] : [sureEstimate("hip-belt-girth", ...belt)]),
    ];
    return turned ? list.toReversed() : list;
  });

/** One to four readings, to a millimetre, with an error that further readings can shrink. */
export const readEstimate: fc.Arbitrary<Estimate> = fc
  .record({
    texts: fc.array(fc.integer({ min: 380, max: 520 }), { minLength: 1, maxLength: 4 }),
    biasMm: fc.integer({ min: 0, max: 8 }),
    repeatMm: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ texts, biasMm, repeatMm }) =>
    estimateOf(
      "torso-length",
      texts.map((mm) => `${mm} mm`),
      { biasMm, repeatMm, resolutionMm: 1 },
    ),
  );

export const build: fc.Arbitrary<readonly (typeof buildFeatures)[number][]> = fc.subarray([...buildFeatures]);

const PRIOR_DIMENSIONS: readonly DimensionId[] = ["torso-length", "hip-belt-girth", "shoulder-breadth"];

/** A joint normal prior of three dimensions: A·Aᵀ of a random lower triangle, so always a covariance. */
export const priors: fc.Arbitrary<Prior> = fc
  .record({
    mean: fc.tuple(real(380, 480), real(800, 1000), real(330, 430)),
    sd: fc.tuple(real(5, 40), real(5, 90), real(5, 30)),
    slopes: fc.tuple(real(-1, 1), real(-1, 1), real(-1, 1)),
  })
  .map(({ mean, sd: [a, b, c], slopes: [ab, ac, bc] }) => {
    const lower = [
      [a, 0, 0],
      [ab * b, b, 0],
      [ac * c, bc * c, c],
    ];
    return {
      label: "people of a test",
      source: "made up",
      caveat: "none",
      dimensions: PRIOR_DIMENSIONS,
      meanMm: mean,
      covarianceMm2: lower.map((row) =>
        lower.map((other) => row.reduce((sum, value, k) => sum + value * (other[k] ?? 0), 0)),
      ),
    };
  });

export function shiftInterval(one: Interval, byMm: number): Interval {
  return interval(one.from + byMm, one.to + byMm, { fromClosed: one.fromClosed, toClosed: one.toClosed });
}

/** The same chart with every end of the torso lengths changed. */
export function withTorso(chart: SizeChart, change: (one: Interval) => Interval): SizeChart {
  return {
    ...chart,
    sizes: chart.sizes.map((size) => {
      const torso = size.ranges["torso-length"];
      if (torso === undefined) return size;
      return {
        ...size,
        ranges: { ...size.ranges, "torso-length": { ...torso, interval: change(torso.interval) } },
      };
    }),
  };
}
