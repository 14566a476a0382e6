import { fc, test } from "@fast-check/vitest";
import type { Size } from "@tapewise/charts";
import { holdAgainst, type SizeFit } from "@tapewise/fit";
import { everything, type Interval, interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { expect } from "vitest";
import { answer, chartOf, sizeOf, sureEstimate } from "../fit/cases.ts";
import { bounded, degrees, real } from "./fit-arbitraries.ts";

/** Three lengths that nothing is read of but a far-off fourth, so that the beliefs are the prior itself. */
const DIMENSIONS = ["torso-length", "back-waist-length", "shoulder-breadth"] as const;

interface Case {
  readonly prior: Prior;
  readonly ranges: readonly Interval[];
}

function priorWith(sds: readonly number[], correlations: readonly number[]): Prior {
  const [ab = 0, ac = 0, bc = 0] = correlations;
  const matrix = [
    [1, ab, ac],
    [ab, 1, bc],
    [ac, bc, 1],
  ];
  return {
    label: "people of a test",
    source: "made up",
    caveat: "none",
    dimensions: DIMENSIONS,
    meanMm: [450, 450, 450],
    covarianceMm2: matrix.map((row, i) => row.map((rho, j) => rho * ((sds[i] ?? 1) * (sds[j] ?? 1)))),
  };
}

const sds = fc.tuple(real(10, 40), real(10, 40), real(10, 40));
// Below 0.49 in size any three correlations make a covariance.
const weak = real(-0.49, 0.49);
const cases: fc.Arbitrary<Case> = fc.record({
  prior: fc.tuple(sds, fc.tuple(weak, weak, weak)).map(([sd, rho]) => priorWith(sd, rho)),
  ranges: fc.tuple(bounded, bounded, bounded),
});

function sizeWith(
  name: string,
  ranges: readonly Interval[],
  order: readonly DimensionId[] = DIMENSIONS,
): Size {
  const cells = order.flatMap((dimension, i) => {
    const range = ranges[i];
    return range === undefined ? [] : [[dimension, range] as const];
  });
  return sizeOf(name, Object.fromEntries(cells));
}

function fitsOf(prior: Prior, sizes: readonly Size[]): readonly SizeFit[] {
  return answer({ estimates: [sureEstimate("neck-base-girth", 400, 5)], prior }, chartOf(sizes)).sizes;
}

function probabilityOf({ prior, ranges }: Case): number {
  const [fit] = fitsOf(prior, [sizeWith("M", ranges)]);
  return fit?.probability ?? Number.NaN;
}

test.prop([sds, fc.tuple(bounded, bounded, bounded)])(
  "law: independent dimensions multiply",
  (sd, ranges) => {
    const product = ranges.reduce(
      (sum, range, i) =>
        sum *
        holdAgainst({ meanMm: 450, sdMm: sd[i] ?? 1, degreesOfFreedom: Number.POSITIVE_INFINITY }, range)
          .inside,
      1,
    );
    expect(probabilityOf({ prior: priorWith(sd, [0, 0, 0]), ranges })).toBeCloseTo(product, 13);
  },
);

test.prop([sds, fc.tuple(bounded, bounded, bounded), fc.integer({ min: 3, max: 12 })])(
  "law: a correlation that vanishes vanishes without a jump",
  (sd, ranges, power) => {
    const rho = 10 ** -power;
    const at = (correlation: number) =>
      probabilityOf({ prior: priorWith(sd, [correlation, -correlation, correlation]), ranges });
    // The density of two standard normal scores never exceeds 1/(2π√(1 − ρ²)); each of three pairs has four corners.
    expect(Math.abs(at(rho) - at(0))).toBeLessThanOrEqual(12 * rho * 0.16 + 1e-12);
  },
);

/** Near the means, where a jump would show. */
const central = fc.tuple(real(400, 460), real(20, 100)).map(([from, width]) => interval(from, from + width));

test.prop([
  sds,
  fc.tuple(central, central, central),
  fc.oneof(real(0, 0.45), fc.constantFrom(0, 1e-4, 1e-3, 0.01)),
])("law: no correlation makes the probability jump", (sd, ranges, rho) => {
  const at = (correlation: number) =>
    probabilityOf({ prior: priorWith(sd, [correlation, correlation, correlation]), ranges });
  // By the density again, which is at most 0.18 up to a correlation of 0.46.
  expect(Math.abs(at(rho + 1e-7) - at(Math.max(0, rho - 1e-7)))).toBeLessThanOrEqual(
    12 * 2e-7 * 0.18 + 1e-11,
  );
});

test.prop([cases])(
  "law: a size fits no better than in each dimension, and not worse than all their doubts together",
  ({ prior, ranges }) => {
    const [fit] = fitsOf(prior, [sizeWith("M", ranges)]);
    const margins = fit?.dimensions.map((one) => one.probability) ?? [];
    expect(margins).toHaveLength(3);
    expect(fit?.probability).toBeLessThanOrEqual(Math.min(...margins) + 1e-10);
    const doubts = margins.reduce((sum, probability) => sum + 1 - probability, 0);
    expect(fit?.probability).toBeGreaterThanOrEqual(Math.max(0, 1 - doubts) - 1e-10);
  },
);

test.prop([cases, fc.array(real(0, 40), { minLength: 6, maxLength: 6 })])(
  "law: a size that contains another in every dimension has at least its probability",
  ({ prior, ranges }, more) => {
    const wider = ranges.map((range, i) =>
      interval(range.from - (more[i] ?? 0), range.to + (more[i + 3] ?? 0)),
    );
    expect(probabilityOf({ prior, ranges: wider })).toBeGreaterThanOrEqual(
      probabilityOf({ prior, ranges }) - 1e-10,
    );
  },
);

test.prop([cases, fc.constantFrom([0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0])])(
  "law: the order in which a prior names its dimensions is irrelevant",
  ({ prior, ranges }, order) => {
    const pick = <T>(list: readonly T[]) => order.flatMap((i) => list.slice(i, i + 1));
    const turned: Prior = {
      ...prior,
      dimensions: pick(prior.dimensions),
      meanMm: pick(prior.meanMm),
      covarianceMm2: pick(prior.covarianceMm2).map(pick),
    };
    expect(probabilityOf({ prior: turned, ranges })).toBeCloseTo(probabilityOf({ prior, ranges }), 12);
  },
);

test.prop([cases, degrees])(
  "law: a dimension without bounds leaves the others as they are",
  ({ prior, ranges }, df) => {
    const estimates = [sureEstimate("torso-length", 440, 15, df)];
    const [torso] = ranges;
    if (torso === undefined) throw new Error("three ranges");
    const sizes = [sizeWith("alone", [torso]), sizeWith("with another", [torso, everything])];
    const [alone, withAnother] = answer({ estimates, prior }, chartOf(sizes)).sizes;
    expect(withAnother?.probability).toBeCloseTo(alone?.probability ?? Number.NaN, 10);
  },
);

test.prop([cases])("law: what two halves of a size share out is the whole", ({ prior, ranges }) => {
  const [first, ...others] = ranges;
  if (first === undefined) throw new Error("three ranges");
  const middle = (first.from + first.to) / 2;
  const part = (from: number, to: number) =>
    probabilityOf({ prior, ranges: [interval(from, to), ...others] });
  expect(part(first.from, middle) + part(middle, first.to)).toBeCloseTo(part(first.from, first.to), 10);
});
