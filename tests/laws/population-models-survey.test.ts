import { fc, test } from "@fast-check/vitest";
import {
  fitDistribution,
  percentileInterval,
  qqPoints,
  readSurvey,
  safeReadSurvey,
  samplePercentile,
  truePercentiles,
  varianceComponents,
  weightedSummary,
} from "@tapewise/population";
import type { QuantileType } from "@tapewise/statistics";
import { describe, expect } from "vitest";
import { between } from "./population-models-arbitraries.ts";

const runs = { numRuns: 50 };
const about = { label: "a crew", source: "drawn at random", caveat: "" };
const lengths = fc.array(fc.integer({ min: 600, max: 1400 }), { minLength: 1, maxLength: 12 });
const values = fc.array(between(300, 500), { minLength: 2, maxLength: 30 });
const types = fc.constantFrom<QuantileType>(1, 2, 4, 5, 6, 7, 8, 9);

describe("reading", () => {
  test.prop(
    [lengths, fc.constantFrom(",", ";", "\t"), fc.constantFrom("\n", "\r\n", "\r"), fc.boolean()],
    runs,
  )(
    "law: people who are written down come back, whatever parts cells and lines",
    (girths, separator, end, quoted) => {
      const cell = (text: string) => (quoted ? `"${text}"` : text);
      const rows = [["name", "waist"], ...girths.map((girth, i) => [`person ${i}`, String(girth)])];
      const text = rows.map((row) => row.map(cell).join(separator)).join(end);
      const survey = readSurvey(text, {
        about,
        dimensions: { "waist-girth": { column: "waist", unit: "mm" } },
        id: "name",
      });
      expect(survey.people.map((person) => person.values["waist-girth"])).toEqual(girths);
      expect(survey.people.map(({ id }) => id)).toEqual(girths.map((_, i) => `person ${i}`));
    },
  );

  test.prop([fc.array(fc.array(fc.string({ maxLength: 6 }), { maxLength: 4 }), { maxLength: 8 })], runs)(
    "law: whatever stands in a file, every line is a person or is reported, and nothing is no number",
    (cells) => {
      const text = ["waist,w", ...cells.map((row) => row.join(","))].join("\n");
      const outcome = safeReadSurvey(text, {
        about,
        dimensions: { "waist-girth": { column: "waist", unit: "cm" } },
        weight: "w",
      });
      if (!outcome.ok) {
        expect(outcome.issues.some(({ severity }) => severity === "error")).toBe(true);
        return;
      }
      for (const { values: own, weight } of outcome.value.people) {
        expect(weight).toBeGreaterThan(0);
        expect(own["waist-girth"] ?? 1).toBeGreaterThan(0);
      }
    },
  );

  test.prop(
    [
      fc.integer({ min: 1300, max: 1500 }),
      fc.integer({ min: 900, max: 1200 }),
      fc.integer({ min: 0, max: 60 }),
    ],
    runs,
  )("law: shoes cancel out of a difference of two columns", (c7, crest, sole) => {
    const read = (by: number) =>
      readSurvey(`a,b\n${c7 + by},${crest + by}\n`, {
        about,
        dimensions: { "torso-length": { column: "a", minus: "b", unit: "mm" } },
      }).people[0]?.values["torso-length"];
    expect(read(sole)).toBe(read(0));
    expect(read(0)).toBe(c7 - crest);
  });
});

describe("percentiles", () => {
  test.prop([values, between(0, 1), types, between(0.1, 9)], runs)(
    "law: equal weights are none",
    (sample, p, type, weight) => {
      const weighted = samplePercentile(
        sample,
        p,
        type,
        sample.map(() => weight),
      );
      // Type 1 and 2 step: a share that is met but for rounding may fall to either side.
      fc.pre(type > 3 || Math.abs(p * sample.length - Math.round(p * sample.length)) > 1e-9);
      expect(weighted).toBeCloseTo(samplePercentile(sample, p, type), 8);
    },
  );

  test.prop([values, between(0, 1), between(0, 1), types, fc.infiniteStream(between(0.1, 5))], runs)(
    "law: weighted percentiles never fall as the share grows, and stay within the sample",
    (sample, p, q, type, stream) => {
      const weights = sample.map(() => stream.next().value ?? 1);
      const [low, high] = p < q ? [p, q] : [q, p];
      const [a, b] = [low, high].map((share) => samplePercentile(sample, share, type, weights));
      expect(a ?? 0).toBeLessThanOrEqual((b ?? 0) + 1e-9);
      expect(a ?? 0).toBeGreaterThanOrEqual(Math.min(...sample) - 1e-9);
      expect(b ?? 0).toBeLessThanOrEqual(Math.max(...sample) + 1e-9);
    },
  );

  test.prop([values, between(0.01, 0.99), between(0.5, 0.99)], runs)(
    "law: an interval covers at least what was asked for, and more confidence never shortens it",
    (sample, p, confidence) => {
      const narrow = percentileInterval(sample, p, confidence);
      expect(narrow.coverage).toBeGreaterThanOrEqual(confidence - 1e-9);
      const wide = percentileInterval(sample, p, (1 + confidence) / 2);
      const end = (value: number | undefined, open: number) => value ?? open;
      expect(end(wide.lower, Number.NEGATIVE_INFINITY)).toBeLessThanOrEqual(
        end(narrow.lower, Number.NEGATIVE_INFINITY),
      );
      expect(end(wide.upper, Number.POSITIVE_INFINITY)).toBeGreaterThanOrEqual(
        end(narrow.upper, Number.POSITIVE_INFINITY),
      );
    },
  );

  test.prop([values, fc.infiniteStream(between(0.1, 5)), between(0.01, 100)], runs)(
    "law: only ratios of weights count in a summary",
    (sample, stream, factor) => {
      const weights = sample.map(() => stream.next().value ?? 1);
      const [once, scaled] = [1, factor].map((by) =>
        weightedSummary(
          sample,
          weights.map((weight) => weight * by),
        ),
      );
      expect(scaled?.mean).toBeCloseTo(once?.mean ?? 0, 7);
      expect(scaled?.effectivePeople).toBeCloseTo(once?.effectivePeople ?? 0, 7);
      expect(scaled?.standardError).toBeCloseTo(once?.standardError ?? 0, 7);
    },
  );
});

describe("fits", () => {
  const sample = fc
    .array(
      fc.integer({ min: -25, max: 25 }).map((tenths) => tenths / 10),
      { minLength: 12, maxLength: 30 },
    )
    .filter((zs) => new Set(zs).size > 8);

  test.prop([sample, between(-50, 50), between(0.2, 5)], { numRuns: 15 })(
    "law: another unit and another zero move a fit along, and change no likelihood but by the unit",
    (zs, shift, factor) => {
      const people = zs.map((z) => 400 + 20 * z);
      const moved = people.map((x) => 1000 + shift + factor * x);
      for (const family of ["normal", "skew-normal"] as const) {
        const [a, b] = [fitDistribution(family, people), fitDistribution(family, moved)];
        fc.pre(!(a.atBoundary || b.atBoundary));
        const spread = a.distribution.sd;
        expect(
          Math.abs(b.distribution.mean - (1000 + shift + factor * a.distribution.mean)) / (factor * spread),
        ).toBeLessThan(1e-3);
        expect(b.logLikelihood).toBeCloseTo(a.logLikelihood - people.length * Math.log(factor), 4);
      }
    },
  );

  test.prop([sample], { numRuns: 15 })("law: a family with one parameter more is never less likely", (zs) => {
    const people = zs.map((z) => 400 + 20 * z);
    const normal = fitDistribution("normal", people);
    expect(fitDistribution("skew-normal", people).logLikelihood).toBeGreaterThanOrEqual(
      normal.logLikelihood - 1e-6,
    );
  });

  test.prop([values], runs)("law: quantiles beside quantiles rise together", (people) => {
    const fit = fitDistribution("normal", [...people, 250, 300, 550]);
    const points = qqPoints(people, fit.distribution);
    points.slice(1).forEach(({ expected, observed }, i) => {
      expect(expected).toBeGreaterThan(points[i]?.expected ?? 0);
      expect(observed).toBeGreaterThanOrEqual(points[i]?.observed ?? 0);
    });
  });
});

describe("repeated readings", () => {
  const people = fc
    .array(fc.array(fc.integer({ min: 380, max: 440 }), { minLength: 2, maxLength: 2 }), {
      minLength: 4,
      maxLength: 12,
    })
    .filter((rows) => new Set(rows.flat()).size > 2);

  test.prop([people, between(-200, 200), between(0.5, 3)], runs)(
    "law: another unit and another zero scale both spreads and nothing else",
    (rows, shift, factor) => {
      const once = varianceComponents(rows);
      const moved = varianceComponents(rows.map((row) => row.map((x) => 1000 + shift + factor * x)));
      expect(moved.withinSd).toBeCloseTo(factor * once.withinSd, 6);
      expect(moved.betweenSd).toBeCloseTo(factor * once.betweenSd, 3);
      expect(moved.reliability).toBeCloseTo(once.reliability, 6);
    },
  );

  test.prop([people], runs)(
    "law: the variance of readings parts into that of people and that of error",
    (rows) => {
      const { betweenSd, withinSd, reliability } = varianceComponents(rows);
      expect(reliability).toBeGreaterThanOrEqual(0);
      expect(reliability).toBeLessThanOrEqual(1);
      const total = betweenSd ** 2 + withinSd ** 2;
      expect(betweenSd ** 2).toBeCloseTo(reliability * total, 6);
    },
  );

  test.prop(
    [fc.array(between(380, 440), { minLength: 3, maxLength: 20 }), between(0, 20), between(0, 20)],
    runs,
  )(
    "law: the greater the error that is taken out, the closer percentiles come to the mean",
    (sample, a, b) => {
      fc.pre(new Set(sample).size > 2);
      const [small, large] = a < b ? [a, b] : [b, a];
      const [near, far] = [large, small].map((errorSd) => {
        const [p95] = truePercentiles({ values: sample, errorSd }, [0.95], { shape: "normal" });
        return p95?.value ?? 0;
      });
      expect(near ?? 0).toBeLessThanOrEqual((far ?? 0) + 1e-9);
    },
  );
});
