import { fc, test } from "@fast-check/vitest";
import { chartDimensions, cuts } from "@tapewise/charts";
import { chartSchema } from "@tapewise/charts/schema";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect } from "vitest";
import chartJson from "../../packages/charts/src/chart.schema.json" with { type: "json" };

const validate = new Ajv2020({ strict: true }).compile(chartJson);

/** Mostly what belongs there, now and then what does not. */
function mostly<T>(right: fc.Arbitrary<T>): fc.Arbitrary<unknown> {
  return fc.oneof({ weight: 60, arbitrary: right as fc.Arbitrary<unknown> }, { weight: 1, arbitrary: wrong });
}

const wrong: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, 0, -1, 1.5, "", " ", "\t", [], {}, "x".repeat(64), "x".repeat(65)),
  fc.integer({ min: 0, max: 3000 }).map((count) => "y".repeat(count)),
  fc.jsonValue({ maxDepth: 2 }),
);

const name = mostly(fc.constantFrom("S", "M", "L/XL", " 2 ", "größer"));
const length = mostly(fc.constantFrom("38 cm", "15 1/2 in", "400 mm", "any text"));
const ends = { from: length, to: length, nominal: length };
const some = <T extends Record<string, fc.Arbitrary<unknown>>>(shape: T) =>
  fc.record(shape, { requiredKeys: [] });
const also = mostly(fc.oneof(length, some(ends)));
const range = mostly(fc.oneof(fc.constantFrom("38-43 cm", "46 cm", "48 cm and up"), some({ ...ends, also })));
const ranges = some(Object.fromEntries(chartDimensions.slice(0, 3).map((dimension) => [dimension, range])));

/** An object of two parts, and rarely with a field that nobody knows. */
function withStray(...parts: readonly fc.Arbitrary<object>[]): fc.Arbitrary<unknown> {
  const stray = fc.oneof(
    { weight: 40, arbitrary: fc.constant<object>({}) },
    { weight: 1, arbitrary: fc.constant<object>({ stray: 1 }) },
  );
  return fc.tuple(...parts, stray).map((all) => Object.assign({}, ...all));
}

const harness = mostly(fc.constantFrom("adjustable", "fixed"));
const positive = mostly(fc.double({ min: 0.1, max: 90, noNaN: true }));
const size = withStray(
  fc.record({ size: name }, {}),
  some({ covers: fc.array(name, { maxLength: 2 }), capacityLitres: positive, massGrams: positive, harness }),
  ranges,
);
const belt = withStray(fc.record({ belt: name }), ranges);
const chart = withStray(
  fc.record({ chart: name, sizes: mostly(fc.array(mostly(size), { maxLength: 4 })) }, {}),
  some({
    maker: name,
    product: name,
    cut: mostly(fc.constantFrom(...cuts)),
    harness,
    swappable: mostly(fc.array(fc.constantFrom("hip-belt", "harness"), { maxLength: 2 })),
    belts: mostly(fc.array(mostly(belt), { maxLength: 2 })),
  }),
).map((data): unknown => JSON.parse(JSON.stringify(data)));

test.prop([chart], { numRuns: 3000 })("law: the schema file and zod accept the same charts", (data) => {
  expect(validate(data), JSON.stringify(data)).toBe(chartSchema.safeParse(data).success);
});

test("the law sees many charts of either kind", () => {
  const verdicts = fc
    .sample(chart, { numRuns: 1000, seed: 7 })
    .map((data) => chartSchema.safeParse(data).success);
  const accepted = verdicts.filter(Boolean).length;
  expect(accepted).toBeGreaterThan(200);
  expect(accepted).toBeLessThan(800);
});

test.each([
  [64, true],
  [65, false],
])("%i characters beyond the basic plane are counted as characters by both", (count, valid) => {
  const data = { chart: "c", sizes: [{ size: "M", "torso-length": { from: "\u{1F392}".repeat(count) } }] };
  expect(validate(data)).toBe(valid);
  expect(chartSchema.safeParse(data).success).toBe(valid);
});
