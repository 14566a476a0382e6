import { fc, test } from "@fast-check/vitest";
import {
  type Conditions,
  type Estimate,
  type EstimateInput,
  parseEstimate,
  readingsFor,
  type StatedError,
  safeEstimate,
  safeReadReadings,
} from "@tapewise/measurement";
import { type LengthReading, parseLength } from "@tapewise/units";
import { expect } from "vitest";
import {
  conditionsArbitrary,
  defaultsArbitrary,
  dimensionArbitrary,
  errorArbitrary,
  sdArbitrary,
  someMillimetres,
  someReadings,
} from "./measurement-arbitraries.ts";

const inputArbitrary: fc.Arbitrary<EstimateInput> = fc.record(
  {
    dimension: dimensionArbitrary,
    readings: someReadings,
    conditions: conditionsArbitrary,
    defaults: defaultsArbitrary,
    error: errorArbitrary,
  },
  { requiredKeys: ["dimension", "readings"] },
);

const stated = (readings: readonly LengthReading[], error: StatedError): Estimate =>
  parseEstimate({ dimension: "torso-length", readings, error });

/** Equal but for the last digits; a bound on the relative difference. */
const expectClose = (actual: number, expected: number, relative = 1e-9) => {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(
    relative * Math.max(Math.abs(actual), Math.abs(expected)),
  );
};

test.prop([inputArbitrary])("law: the lines' variances sum to u², and their shares to 1", (input) => {
  const { budget, uncertaintyMm } = parseEstimate(input);
  const variance = budget.reduce((sum, line) => sum + line.uncertaintyMm ** 2, 0);
  expectClose(variance, uncertaintyMm ** 2);
  const shares = budget.reduce((sum, line) => sum + line.share, 0);
  expectClose(shares, uncertaintyMm === 0 ? 0 : 1);
});

test.prop([inputArbitrary])("law: u² = lasting² + perReading²/n", (input) => {
  const { lastingMm, perReadingMm, uncertaintyMm, readings } = parseEstimate(input);
  expectClose(lastingMm ** 2 + perReadingMm ** 2 / readings.length, uncertaintyMm ** 2);
});

test.prop([inputArbitrary, fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true })])(
  "law: the mean lies in the middle of the interval, which reaches factor · u to both sides",
  (input, coverageProbability) => {
    const { mm, uncertaintyMm, coverage } = parseEstimate({ ...input, coverageProbability });
    expect(coverage.lowerMm).toBeLessThanOrEqual(mm);
    expect(coverage.upperMm).toBeGreaterThanOrEqual(mm);
    expect(Math.abs(coverage.upperMm - mm - coverage.factor * uncertaintyMm)).toBeLessThan(1e-9);
    expect(Math.abs(mm - coverage.lowerMm - coverage.factor * uncertaintyMm)).toBeLessThan(1e-9);
  },
);

test.prop([
  inputArbitrary,
  fc.tuple(
    fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    fc.double({ min: 0.01, max: 0.99, noNaN: true }),
  ),
])("law: a higher probability never has a narrower interval", (input, probabilities) => {
  const [less, more] = probabilities
    .toSorted((a, b) => a - b)
    .map((coverageProbability) => parseEstimate({ ...input, coverageProbability }).coverage.factor);
  expect(less).toBeLessThanOrEqual(more ?? 0);
});

test.prop([inputArbitrary, fc.infiniteStream(fc.nat())])(
  "law: the order of readings makes no difference to the estimate",
  (input, keys) => {
    const shuffled = input.readings
      .map((reading) => ({ reading, key: Number(keys.next().value) }))
      .toSorted((a, b) => a.key - b.key)
      .map(({ reading }) => reading);
    const first = parseEstimate(input);
    const second = parseEstimate({ ...input, readings: shuffled });
    expectClose(second.mm, first.mm, 1e-14);
    expectClose(second.uncertaintyMm, first.uncertaintyMm);
    expectClose(second.lastingMm, first.lastingMm);
    if (Number.isFinite(first.degreesOfFreedom)) expectClose(second.degreesOfFreedom, first.degreesOfFreedom);
  },
);

test.prop([someMillimetres, errorArbitrary, fc.integer({ min: 1, max: 5000 })])(
  "law: under a stated error, longer readings move the estimate along and leave its uncertainty",
  (readings, error, by) => {
    const moved = readings.map((reading) => parseLength(`${reading.mm + by} mm`));
    const [first, second] = [stated(readings, error), stated(moved, error)];
    expectClose(second.mm, first.mm + by, 1e-14);
    expect(second.uncertaintyMm).toBe(first.uncertaintyMm);
    expectClose(second.coverage.lowerMm, first.coverage.lowerMm + by, 1e-9);
  },
);

test.prop([someMillimetres, errorArbitrary, fc.integer({ min: 2, max: 100 })])(
  "law: under a stated error, readings and errors k times as large give an estimate k times as large",
  (readings, error, k) => {
    const larger = readings.map((reading) => parseLength(`${reading.mm * k} mm`));
    const scaled = {
      biasMm: error.biasMm * k,
      repeatMm: error.repeatMm * k,
      resolutionMm: error.resolutionMm * k,
    };
    const [first, second] = [stated(readings, error), stated(larger, scaled)];
    expectClose(second.mm, first.mm * k, 1e-14);
    expectClose(second.uncertaintyMm, first.uncertaintyMm * k);
    expectClose(second.perReadingMm, first.perReadingMm * k);
  },
);

test.prop([someMillimetres, errorArbitrary])(
  "law: under a stated error, a further reading equal to the mean moves nothing and never raises the uncertainty",
  (readings, error) => {
    // Twice each reading and their mirror images about 750 mm: then the mean is 750, a reading of its own.
    const even = readings.flatMap(({ mm }) => [parseLength(`${mm} mm`), parseLength(`${1500 - mm} mm`)]);
    const before = stated(even, error);
    const after = stated([...even, parseLength("750 mm")], error);
    expectClose(after.mm, before.mm, 1e-14);
    expect(after.uncertaintyMm).toBeLessThanOrEqual(before.uncertaintyMm * (1 + 1e-14));
  },
);

test.prop([inputArbitrary, fc.integer({ min: 1, max: 200 })])(
  "law: readings still to be taken, of the same kind, bring the uncertainty down to what lasts and no further",
  (input, further) => {
    const { lastingMm, perReadingMm, uncertaintyMm, readings } = parseEstimate(input);
    const after = Math.sqrt(lastingMm ** 2 + perReadingMm ** 2 / (readings.length + further));
    expect(after).toBeLessThanOrEqual(uncertaintyMm * (1 + 1e-9));
    expect(after).toBeGreaterThanOrEqual(lastingMm);
  },
);

test.prop([
  someMillimetres,
  errorArbitrary,
  sdArbitrary,
  fc.constantFrom("biasMm" as const, "resolutionMm" as const),
])(
  "law: more doubt in a stated bias or a stated resolution never lowers the uncertainty",
  (readings, error, more, part) => {
    const doubtful = stated(readings, { ...error, [part]: error[part] + more });
    expect(doubtful.uncertaintyMm).toBeGreaterThanOrEqual(
      stated(readings, error).uncertaintyMm * (1 - 1e-12),
    );
  },
);

test.prop([someMillimetres, errorArbitrary, sdArbitrary])(
  "law: more stated scatter never lowers the uncertainty of one reading, nor of readings that scatter over half a step",
  (readings, error, more) => {
    const [first] = readings;
    if (first === undefined) throw new Error("no reading");
    const worse = { ...error, repeatMm: error.repeatMm + more };
    expect(stated([first], worse).uncertaintyMm).toBeGreaterThanOrEqual(
      stated([first], error).uncertaintyMm * (1 - 1e-12),
    );
    // d u² / d σ² = 1/n − 2 (n−1)/n Σ exp(−(2πkσ/q)²), above 0 for σ > q/2 and fewer than 9,000 readings.
    const scattered = { ...error, resolutionMm: Math.min(error.resolutionMm, 2 * error.repeatMm) };
    expect(stated(readings, { ...scattered, repeatMm: worse.repeatMm }).uncertaintyMm).toBeGreaterThanOrEqual(
      stated(readings, scattered).uncertaintyMm * (1 - 1e-12),
    );
  },
);

test.prop([fc.integer({ min: 3, max: 40 }), fc.double({ min: 1, max: 30, noNaN: true })])(
  "law: a little scatter helps readings that would all fall on one mark (dither)",
  (count, step) => {
    const readings = Array.from({ length: count }, () => parseLength("430 mm"));
    const still = stated(readings, { biasMm: 0, repeatMm: 0, resolutionMm: step });
    const moved = stated(readings, { biasMm: 0, repeatMm: step / 4, resolutionMm: step });
    expect(moved.uncertaintyMm).toBeLessThan(still.uncertaintyMm);
  },
);

test.prop([fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 8 })])(
  "law: the same lengths in sixteenths of an inch and in centimetres have the same mean",
  (sixteenths) => {
    const inches = sixteenths.map((count) => parseLength(`${count}/16 in`));
    // 1/16 in is 0.15875 cm exactly.
    const centimetres = sixteenths.map((count) => {
      const hundredThousandths = count * 15_875;
      const whole = Math.floor(hundredThousandths / 100_000);
      return parseLength(`${whole}.${String(hundredThousandths % 100_000).padStart(5, "0")} cm`);
    });
    const error = { biasMm: 1, repeatMm: 1, resolutionMm: 1 };
    expect(stated(centimetres, error).mm).toBe(stated(inches, error).mm);
    expect(stated(centimetres, error).uncertaintyMm).toBe(stated(inches, error).uncertaintyMm);
  },
);

test.prop([inputArbitrary])(
  "law: the effective degrees of freedom lie between the fewest of a component and the sum of all",
  (input) => {
    const { budget, degreesOfFreedom } = parseEstimate(input);
    // The causes of the pooled spread are one component: they have their degrees of freedom together.
    const pooled = budget.filter((line) => line.averagesOut && line.source !== "resolution").slice(0, 1);
    const others = budget.filter((line) => !line.averagesOut || line.source === "resolution");
    const all = [...pooled, ...others].map((line) => line.degreesOfFreedom);
    expect(degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...all) * (1 - 1e-9));
    const sum = all.reduce((total, degrees) => total + degrees, 0);
    expect(degreesOfFreedom).toBeLessThanOrEqual(
      all.length === 0 ? Number.POSITIVE_INFINITY : sum * (1 + 1e-9),
    );
  },
);

test.prop([inputArbitrary])(
  "law: readings come back as they went in, whatever there is to ask about them",
  (input) => {
    const outcome = safeEstimate(input);
    const sum = input.readings.reduce((total, reading) => total + reading.mm, 0);
    expect(outcome.ok && outcome.value.readings).toBe(input.readings);
    if (outcome.ok) expectClose(outcome.value.mm, sum / input.readings.length, 1e-12);
    expect(outcome.issues.every((issue) => issue.severity === "warning")).toBe(true);
  },
);

test.prop([someMillimetres, conditionsArbitrary, errorArbitrary])(
  "law: under a stated error, conditions and questions change nothing",
  (readings, conditions, error) => {
    const { conditions: _with, ...first } = parseEstimate({
      dimension: "torso-length",
      readings,
      conditions,
      error,
    });
    const { conditions: _without, ...second } = stated(readings, error);
    expect(first).toEqual(second);
  },
);

test.prop([fc.array(fc.integer({ min: 30, max: 120 }), { minLength: 2, maxLength: 8 }), conditionsArbitrary])(
  "law: a question changes an estimate only by the coarser step that it names",
  (centimetres, conditions) => {
    const fine = centimetres.map((cm) => parseLength(`${cm}.0 cm`));
    const coarse = centimetres.map((cm) => parseLength(`${cm} cm`));
    const asked = safeEstimate({ dimension: "torso-length", readings: fine, conditions });
    const isNamed = asked.issues.some(
      (issue) => issue.code === "readings-rounded" && issue.facts.coarse === "1 cm",
    );
    fc.pre(isNamed);
    const { readings: _fine, ...estimate } = parseEstimate({
      dimension: "torso-length",
      readings: fine,
      conditions,
    });
    const { readings: _coarse, ...expected } = parseEstimate({
      dimension: "torso-length",
      readings: coarse,
      conditions,
    });
    expect(estimate).toEqual(expected);
  },
);

test.prop([
  fc.record({ perReadingMm: sdArbitrary, lastingMm: sdArbitrary }),
  fc.double({ min: 0.5, max: 60, noNaN: true }),
])("law: readingsFor is the smallest number of readings that reaches the target", (parts, target) => {
  const after = (count: number) => Math.sqrt(parts.lastingMm ** 2 + parts.perReadingMm ** 2 / count);
  const count = readingsFor(parts, target);
  if (count === undefined) {
    expect(after(Number.MAX_SAFE_INTEGER)).toBeGreaterThanOrEqual(target * (1 - 1e-11));
  } else {
    expect(after(count)).toBeLessThanOrEqual(target * (1 + 1e-11));
    if (count > 1) expect(after(count - 1)).toBeGreaterThan(target * (1 - 1e-11));
  }
});

const anyNumbers = (value: unknown): readonly number[] =>
  typeof value === "number"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(anyNumbers)
      : [];

const anyText: fc.Arbitrary<unknown> = fc.oneof(
  fc.string({ unit: "binary", maxLength: 80 }),
  fc
    .tuple(
      fc.double(),
      fc.constantFrom("mm", "cm", "m", "in", "ft", '"', "″", "'", "", " 3/8 in", "e9 cm", "%"),
    )
    .map(([number, unit]) => `${number}${unit}`),
  fc
    .tuple(fc.stringMatching(/^[0-9]{1,60}[.,]?[0-9]{0,60}$/), fc.constantFrom(" mm", " m", " ft", ""))
    .map(([number, unit]) => number + unit),
  fc.anything(),
);

test.prop([
  dimensionArbitrary,
  fc.oneof(fc.array(anyText, { maxLength: 10 }), fc.anything()),
  fc.option(fc.constantFrom("mm", "cm", "m", "in", "ft"), { nil: undefined }),
])(
  "law: whatever stands in a list of readings, nothing throws and no figure is NaN",
  (dimension, texts, unit) => {
    // What a file holds has no type.
    const read = safeReadReadings(dimension, texts as unknown[], unit === undefined ? {} : { unit });
    expect(read.ok || read.issues.length > 0).toBe(true);
    if (!read.ok) return;
    const outcome = safeEstimate({ dimension, readings: read.value });
    expect(outcome.ok).toBe(true);
    if (outcome.ok) {
      const { mm, uncertaintyMm, coverage, lastingMm, perReadingMm } = outcome.value;
      expect(
        [mm, uncertaintyMm, coverage.lowerMm, coverage.upperMm, lastingMm, perReadingMm].every(
          Number.isFinite,
        ),
      ).toBe(true);
    }
    expect(anyNumbers(outcome).filter(Number.isNaN)).toEqual([]);
    expect(JSON.stringify(outcome.issues)).not.toMatch(/NaN|undefined|Infinity/);
  },
);

test.prop([fc.array(millimetresOrInches(), { minLength: 1, maxLength: 3 }), fc.anything(), fc.anything()])(
  "law: whatever stands for conditions and a stated error, nothing throws and no figure is NaN",
  (readings, conditions, error) => {
    const outcome = safeEstimate({
      dimension: "hip-belt-girth",
      readings,
      // What a file holds has no type.
      ...(conditions === undefined ? {} : { conditions: conditions as Conditions }),
      ...(error === undefined ? {} : { error: error as StatedError }),
    });
    expect(outcome.ok || outcome.issues.length > 0).toBe(true);
    expect(anyNumbers(outcome).filter(Number.isNaN)).toEqual([]);
  },
);

function millimetresOrInches(): fc.Arbitrary<LengthReading> {
  return fc
    .tuple(fc.integer({ min: 1, max: 2000 }), fc.constantFrom("mm", "in"))
    .map(([number, unit]) => parseLength(`${number} ${unit}`));
}

test("law: the time for ten thousand readings grows in proportion, not with its square", () => {
  const listOf = (count: number) =>
    Array.from({ length: count }, (_, i) => parseLength(`${430 + ((i * 7919) % 23)} mm`));
  const secondsFor = (readings: readonly LengthReading[], times: number) => {
    const start = performance.now();
    for (let i = 0; i < times; i += 1) safeEstimate({ dimension: "torso-length", readings });
    return (performance.now() - start) / 1000 / times;
  };
  const [few, many] = [listOf(100), listOf(10_000)];
  secondsFor(few, 50);
  // The best of several runs, because other work on the machine only ever adds time.
  const best = (readings: readonly LengthReading[], times: number) =>
    Math.min(...Array.from({ length: 5 }, () => secondsFor(readings, times)));
  // Were it quadratic, it would be ten thousand times as long.
  expect(best(many, 2) / best(few, 100)).toBeLessThan(1000);
});
