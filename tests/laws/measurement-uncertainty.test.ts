import { fc, test } from "@fast-check/vitest";
import {
  combineUncertainties,
  expandUncertainty,
  type InputDistribution,
  meanOfCorrelated,
  propagateDistributions,
  propagateUncertainty,
  sumOfJoined,
} from "@tapewise/measurement";
import { createRandom, summarise } from "@tapewise/statistics";
import { describe, expect, test as plain } from "vitest";

const uncertaintyArbitrary = fc.double({ min: 0, max: 100, noNaN: true });
const slopeArbitrary = fc.double({ min: -20, max: 20, noNaN: true });
const partArbitrary = fc.record({
  value: fc.double({ min: -1000, max: 1000, noNaN: true }),
  uncertainty: uncertaintyArbitrary,
  slope: slopeArbitrary,
});
const partsArbitrary = fc.array(partArbitrary, { minLength: 1, maxLength: 6 });

type Part = { readonly value: number; readonly uncertainty: number; readonly slope: number };

function linear(parts: readonly Part[]) {
  return {
    inputs: parts.map(({ value, uncertainty }, i) => ({ name: `x${i}`, value, uncertainty })),
    model: (x: ArrayLike<number>) => parts.reduce((sum, { slope }, i) => sum + slope * Number(x[i]), 0),
  };
}

const relative = (a: number, b: number, scale: number) => Math.abs(a - b) / Math.max(scale, 1e-300);

test.prop([partsArbitrary])("law: a linear model has the root of the sum of squares", (parts) => {
  const exact = Math.hypot(...parts.map(({ slope, uncertainty }) => slope * uncertainty));
  const sensitivities = parts.map(({ slope }) => slope);
  const given = propagateUncertainty({ ...linear(parts), sensitivities });
  expect(relative(given.uncertainty, exact, exact)).toBeLessThan(1e-12);
});

test.prop([
  fc.array(
    fc.record({
      value: fc.double({ min: -1000, max: 1000, noNaN: true }),
      uncertainty: fc.double({ min: 0.1, max: 100, noNaN: true }),
      slope: slopeArbitrary,
    }),
    { minLength: 1, maxLength: 6 },
  ),
])("law: slopes found by differences are those of a linear model", (parts) => {
  const { lines } = propagateUncertainty(linear(parts));
  // Values up to 1.2e5 are rounded by 1e-11, and divided by a step of 0.1/16.
  lines.forEach(({ sensitivity }, i) => {
    expect(Math.abs(sensitivity - (parts[i]?.slope ?? Number.NaN))).toBeLessThan(1e-7);
  });
});

test.prop([partsArbitrary])("law: shares add up to one, or to none where all is exact", (parts) => {
  const sensitivities = parts.map(({ slope }) => slope);
  const { lines, uncertainty } = propagateUncertainty({ ...linear(parts), sensitivities });
  const sum = lines.reduce((total, { share }) => total + share, 0);
  expect(Math.abs(sum - (uncertainty > 0 ? 1 : 0))).toBeLessThan(1e-9);
});

test.prop([
  fc.double({ min: 0.1, max: 50, noNaN: true }),
  fc.double({ min: 0.1, max: 50, noNaN: true }),
  fc.double({ min: -1, max: 1, noNaN: true }),
])("law: var(a + b) + var(a − b) is twice the sum of both, however they go together", (a, b, coefficient) => {
  const inputs = [
    { name: "a", value: 0, uncertainty: a },
    { name: "b", value: 0, uncertainty: b },
  ];
  const varianceOf = (sign: number) =>
    propagateUncertainty({
      inputs,
      model: (x) => Number(x[0]) + sign * Number(x[1]),
      sensitivities: [1, sign],
      correlations: [{ between: ["a", "b"], coefficient }],
    }).uncertainty ** 2;
  const whole = 2 * (a * a + b * b);
  expect(relative(varianceOf(1) + varianceOf(-1), whole, whole)).toBeLessThan(1e-12);
});

test.prop([
  fc.integer({ min: 1, max: 12 }),
  fc.double({ min: 0.1, max: 20, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
])(
  "law: the mean of correlated readings is the law of propagation for their mean",
  (count, uncertaintyMm, correlation) => {
    const names = Array.from({ length: count }, (_, i) => `r${i}`);
    const pairs = names.flatMap((one, i) => names.slice(i + 1).map((other) => [one, other] as const));
    const propagated = propagateUncertainty({
      inputs: names.map((name, i) => ({ name, value: 430 + i, uncertainty: uncertaintyMm })),
      model: (x) => Array.from(x).reduce((sum, mm) => sum + mm, 0) / count,
      sensitivities: names.map(() => 1 / count),
      correlations: pairs.map((between) => ({ between, coefficient: correlation })),
    });
    const mean = meanOfCorrelated(
      names.map((_, i) => 430 + i),
      uncertaintyMm,
      correlation,
    );
    expect(relative(mean.uncertaintyMm, propagated.uncertainty, uncertaintyMm)).toBeLessThan(1e-12);
    expect(mean.mm).toBeCloseTo(propagated.value, 9);
    // It never falls below what all of them share.
    expect(mean.uncertaintyMm).toBeGreaterThanOrEqual(uncertaintyMm * Math.sqrt(correlation) * (1 - 1e-12));
  },
);

test.prop([
  fc.array(
    fc.record({
      mm: fc.double({ min: 1, max: 300, noNaN: true }),
      uncertaintyMm: fc.double({ min: 0.01, max: 5, noNaN: true }),
      degreesOfFreedom: fc.double({ min: 1, max: 50, noNaN: true }),
    }),
    { minLength: 1, maxLength: 5 },
  ),
])("law: pieces without joints and scale combine as components do", (pieces) => {
  const sum = sumOfJoined(pieces);
  const combined = combineUncertainties(
    pieces.map(({ uncertaintyMm, degreesOfFreedom }) => ({ uncertainty: uncertaintyMm, degreesOfFreedom })),
  );
  expect(relative(sum.uncertainty, combined.uncertainty, combined.uncertainty)).toBeLessThan(1e-12);
  expect(relative(sum.degreesOfFreedom, combined.degreesOfFreedom, combined.degreesOfFreedom)).toBeLessThan(
    1e-9,
  );
});

describe("the two ways to propagate agree on linear models", () => {
  const distributionArbitrary: fc.Arbitrary<InputDistribution> = fc
    .record({
      lower: fc.double({ min: -50, max: 50, noNaN: true }),
      width: fc.double({ min: 0.1, max: 20, noNaN: true }),
      shape: fc.constantFrom("normal", "rectangular", "triangular", "arcsine", "trapezoidal" as const),
    })
    .map(({ lower, width, shape }): InputDistribution => {
      if (shape === "normal") return { shape, mean: lower, sd: width };
      if (shape === "trapezoidal") return { shape, lower, upper: lower + width, topShare: 0.3 };
      return { shape: shape as "rectangular" | "triangular" | "arcsine", lower, upper: lower + width };
    });
  const TRIALS = 4000;

  test.prop(
    [
      fc.array(fc.tuple(distributionArbitrary, fc.double({ min: 0.1, max: 5, noNaN: true })), {
        minLength: 1,
        maxLength: 4,
      }),
      fc.integer({ min: 0, max: 1e6 }),
    ],
    { numRuns: 40 },
  )("law: mean and standard uncertainty, within what the number of draws allows", (parts, seed) => {
    const model = (x: ArrayLike<number>) =>
      parts.reduce((sum, [, slope], i) => sum + slope * Number(x[i]), 0);
    const simulated = propagateDistributions({
      inputs: parts.map(([distribution], i) => ({ name: `x${i}`, distribution })),
      model,
      seed,
      trials: TRIALS,
    });
    const propagated = propagateUncertainty({
      inputs: parts.map(([distribution], i) => ({ name: `x${i}`, ...momentsOf(distribution) })),
      model,
    });
    // Six standard errors: of a mean u/√N, and of a standard deviation at most u/√(2N), as none is more peaked than normal.
    const allowed = (6 * propagated.uncertainty) / Math.sqrt(TRIALS);
    expect(Math.abs(simulated.value - propagated.value)).toBeLessThan(allowed);
    expect(Math.abs(simulated.uncertainty - propagated.uncertainty)).toBeLessThan(allowed / Math.SQRT2);
  });

  /** Mean and standard deviation, worked out here once more. */
  function momentsOf(distribution: InputDistribution): { value: number; uncertainty: number } {
    if (distribution.shape === "normal") return { value: distribution.mean, uncertainty: distribution.sd };
    if (distribution.shape === "student-t") throw new Error("not drawn here");
    const { lower, upper, shape } = distribution;
    const divisor = {
      rectangular: 12,
      triangular: 24,
      arcsine: 8,
      trapezoidal: 24 / 1.09,
      "curvilinear-trapezoid": Number.NaN,
    };
    return { value: (lower + upper) / 2, uncertainty: (upper - lower) / Math.sqrt(divisor[shape]) };
  }
});

describe("an expanded uncertainty holds what it states", () => {
  const CASES = 6000;

  plain.each([
    [2, 0.95],
    [5, 0.95],
    [5, 0.68],
    [20, 0.99],
  ])("law: the mean of %i normal readings, at %f", (count, probability) => {
    const random = createRandom(42).fork(count).fork(`${probability}`);
    let held = 0;
    for (let i = 0; i < CASES; i += 1) {
      const { mean, sd = 0 } = summarise(Array.from({ length: count }, () => 430 + 8 * random.normal()));
      const result = { value: mean, uncertainty: sd / Math.sqrt(count), degreesOfFreedom: count - 1 };
      const { lower, upper } = expandUncertainty(result, probability);
      if (lower <= 430 && 430 <= upper) held += 1;
    }
    const deviation = Math.sqrt((probability * (1 - probability)) / CASES);
    expect(Math.abs(held / CASES - probability)).toBeLessThan(4 * deviation);
  });

  plain(
    "law: two heights with their own readings, joined by Welch–Satterthwaite, hold 95 % to a percent",
    () => {
      const random = createRandom(43);
      let held = 0;
      for (let i = 0; i < CASES; i += 1) {
        const inputs = [4, 6].map((count, k) => {
          const draws = Array.from({ length: count }, () =>
            k === 0 ? 1440 + 6 * random.normal() : 1015 + 4 * random.normal(),
          );
          const { mean, sd = 0 } = summarise(draws);
          return {
            name: `${k}`,
            value: mean,
            uncertainty: sd / Math.sqrt(count),
            degreesOfFreedom: count - 1,
          };
        });
        const torso = propagateUncertainty({
          inputs,
          model: (x) => Number(x[0]) - Number(x[1]),
          sensitivities: [1, -1],
        });
        const { lower, upper } = expandUncertainty(torso, 0.95);
        if (lower <= 425 && 425 <= upper) held += 1;
      }
      // Four standard deviations of a count, and a percent for an approximate formula.
      expect(Math.abs(held / CASES - 0.95)).toBeLessThan(0.01 + 4 * Math.sqrt((0.95 * 0.05) / CASES));
    },
  );
});

test.prop([
  fc.double({ min: 0.1, max: 100, noNaN: true }),
  fc.double({ min: 0.5, max: 100, noNaN: true }),
  fc.double({ min: 0.01, max: 0.98, noNaN: true }),
])(
  "law: a surer interval is wider, and more degrees of freedom make it narrower",
  (uncertainty, df, probability) => {
    const result = { value: 0, uncertainty, degreesOfFreedom: df };
    const { expanded } = expandUncertainty(result, probability);
    expect(expandUncertainty(result, probability + 0.01).expanded).toBeGreaterThan(expanded);
    expect(expandUncertainty({ ...result, degreesOfFreedom: df * 2 }, probability).expanded).toBeLessThan(
      expanded * (1 + 1e-12),
    );
  },
);
