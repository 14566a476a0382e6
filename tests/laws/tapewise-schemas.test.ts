import { fc, test } from "@fast-check/vitest";
import { exchangeReasons, LONGEST_NAME, outcomeKinds } from "@tapewise/afterwards";
import { buildFeatures } from "@tapewise/fit";
import { dimensionIds, measurers, tools } from "@tapewise/landmarks";
import { lengthUnits } from "@tapewise/units";
import { Ajv2020 } from "ajv/dist/2020.js";
import { outcomeSchema, personSchema } from "tapewise/schema";
import { describe, expect } from "vitest";
import outcomeJson from "../../packages/tapewise/src/schema/outcome.schema.json" with { type: "json" };
import personJson from "../../packages/tapewise/src/schema/person.schema.json" with { type: "json" };

const compile = (schema: object) => new Ajv2020({ strict: true, strictTypes: false }).compile(schema);

const wrong: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, 0, -1, 1.5, "", " ", [], {}, "nobody", 2 ** 53),
  fc.jsonValue({ maxDepth: 2 }),
);

/** Mostly what belongs there, now and then what does not. */
function mostly(right: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc.oneof({ weight: 60, arbitrary: right }, { weight: 1, arbitrary: wrong });
}

/** An object with some of these fields. */
const some = (shape: Readonly<Record<string, fc.Arbitrary<unknown>>>): fc.Arbitrary<object> =>
  fc.record(Object.fromEntries(Object.entries(shape).map(([key, one]) => [key, mostly(one)])), {
    requiredKeys: [],
  });

const any = (words: readonly string[]): fc.Arbitrary<unknown> => fc.constantFrom(...words);
const length = fc.oneof(any(["43.2 cm", "17 in", "anything"]), fc.integer({ min: 0, max: 2000 }));
const millimetres = fc.double({ min: 0, max: 2000, noNaN: true });
const some4 = dimensionIds.slice(0, 4);

const person = some({
  id: fc.oneof(fc.string(), fc.integer()),
  cut: any(["women", "men"]),
  stature: length,
  measuredBy: any(measurers),
  tool: any(tools),
  ruleLength: length,
  landmarksFoundAfresh: fc.boolean(),
  unit: any(lengthUnits),
  error: fc.record({ biasMm: millimetres, repeatMm: millimetres, resolutionMm: millimetres }),
  build: fc.array(any(buildFeatures), { maxLength: 2 }),
  firstPack: fc.boolean(),
  readings: some(Object.fromEntries(some4.map((id) => [id, fc.array(mostly(length), { maxLength: 3 })]))),
  anything: fc.boolean(),
});

const name = fc.oneof(
  any(["S", "M", "Doily 45", " "]),
  fc.integer({ min: LONGEST_NAME - 1, max: LONGEST_NAME + 1 }).map((count) => "x".repeat(count)),
  // A character beyond the basic plane is two units of UTF-16 and one character.
  fc.integer({ min: LONGEST_NAME / 2, max: LONGEST_NAME + 1 }).map((count) => "\u{1F392}".repeat(count)),
);
const plainName = fc.oneof(
  { weight: 20, arbitrary: any(["S", "M", "Doily 45"]) },
  { weight: 1, arbitrary: name },
);
const estimate = fc.record(
  {
    mm: mostly(fc.constant(436)),
    uncertaintyMm: mostly(millimetres),
    degreesOfFreedom: mostly(fc.constant(8)),
  },
  { requiredKeys: ["mm", "uncertaintyMm"] },
);
/** Only an exchange has a reason and another size. */
const exchange = some({ reason: any(exchangeReasons), exchangedFor: plainName });
const outcome = fc
  .tuple(
    fc.record({
      v: mostly(fc.constant(1)),
      at: mostly(any(["2026-05-03", "2026-05-03T10:00:00Z", "2026-05-03T10:00:00+02:00"])),
      product: mostly(
        fc
          .record({ chart: plainName })
          .chain((of) => some({ maker: plainName }).map((by) => ({ ...of, ...by }))),
      ),
      size: mostly(plainName),
    }),
    some({
      id: plainName,
      person: plainName,
      estimates: some(Object.fromEntries(some4.map((id) => [id, estimate]))),
      anything: fc.boolean(),
    }),
  )
  .chain(([must, may]) =>
    fc
      .oneof(
        { weight: 6, arbitrary: exchange.map((more) => ({ outcome: "exchanged", ...more })) },
        { weight: 6, arbitrary: any(outcomeKinds).map((kind) => ({ outcome: kind })) },
        {
          weight: 1,
          arbitrary: fc
            .tuple(mostly(any(outcomeKinds)), exchange)
            .map(([kind, more]) => ({ outcome: kind, ...more })),
        },
      )
      .map((became) => ({ ...must, ...became, ...may })),
  );

describe.each([
  ["person", personJson, personSchema, person],
  ["outcome", outcomeJson, outcomeSchema, outcome],
] as const)("of a %s", (_what, json, schema, generated) => {
  const validate = compile(json);
  const data = generated.map((one): unknown => JSON.parse(JSON.stringify(one)));

  test.prop([data], { numRuns: 3000 })("law: the schema file and zod give the same verdict", (one) => {
    expect(validate(one), JSON.stringify(one)).toBe(schema.safeParse(one).success);
  });

  test("the law sees many of either kind", () => {
    const verdicts = fc.sample(data, { numRuns: 1000, seed: 7 }).map((one) => schema.safeParse(one).success);
    const accepted = verdicts.filter(Boolean).length;
    expect(accepted).toBeGreaterThan(200);
    expect(accepted).toBeLessThan(850);
  });
});

test.each([
  [LONGEST_NAME, true],
  [LONGEST_NAME + 1, false],
])("%i characters beyond the basic plane are counted as characters by both", (count, isName) => {
  const row = {
    v: 1,
    at: "2026-05-03",
    product: { chart: "c" },
    size: "\u{1F392}".repeat(count),
    outcome: "kept",
  };
  expect(compile(outcomeJson)(row)).toBe(isName);
  expect(outcomeSchema.safeParse(row).success).toBe(isName);
});
