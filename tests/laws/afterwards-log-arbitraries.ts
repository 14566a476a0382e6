import { fc } from "@fast-check/vitest";
import { exchangeReasons, type OutcomeRow } from "@tapewise/afterwards";
import { dimensionIds } from "@tapewise/landmarks";

/** Any text, odd ones among them: separators, control characters, quotes, halves of pairs. */
const name = fc.oneof(
  fc.string({ minLength: 1, maxLength: 12, unit: "binary" }),
  fc.constantFrom("p1", "p10", '"', "\\", "\n", "\u2028", "\uD800", '"p1"'),
);
const positive = fc.double({ min: 1e-9, max: 1e6, noNaN: true });
const moment = fc
  .tuple(
    fc.date({ min: new Date("0001-01-01"), max: new Date("9999-12-31"), noInvalidDate: true }),
    fc.boolean(),
  )
  .map(([date, isDay]) => (isDay ? date.toISOString().slice(0, 10) : date.toISOString()));

const estimate = fc.record(
  { mm: positive, uncertaintyMm: fc.oneof(fc.constant(0), positive), degreesOfFreedom: positive },
  { requiredKeys: ["mm", "uncertaintyMm"] },
);
const common = {
  v: fc.constant(1 as const),
  at: moment,
  product: fc.record({ maker: name, chart: name }, { requiredKeys: ["chart"] }),
  size: name,
  id: name,
  person: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom("p1", "p2", "p10", "\u2028") },
    { weight: 1, arbitrary: name },
  ),
  estimates: fc.record(Object.fromEntries(dimensionIds.map((id) => [id, estimate])), { requiredKeys: [] }),
};
const required = ["v", "at", "product", "size", "outcome"] as const;

/** Rows of every kind. */
export const outcomeRows: fc.Arbitrary<OutcomeRow> = fc.oneof(
  fc.record({ ...common, outcome: fc.constant("kept" as const) }, { requiredKeys: [...required] }),
  fc.record(
    {
      ...common,
      outcome: fc.constant("exchanged" as const),
      reason: fc.constantFrom(...exchangeReasons),
      exchangedFor: name,
    },
    { requiredKeys: [...required] },
  ),
);

/** What a field may hold that it should not, and sometimes may. */
const anything = fc.oneof(
  fc.constantFrom<unknown>(
    "",
    "x",
    "x".repeat(200),
    "x".repeat(201),
    0,
    -1,
    1,
    2,
    1.5,
    true,
    null,
    [],
    {},
    { chart: "x" },
  ),
  fc.constantFrom<unknown>(
    "kept",
    "exchanged",
    "2026-02-29",
    "2024-02-29",
    "2026-05-04T10:00Z",
    "uncomfortable",
  ),
  fc.constantFrom<unknown>(
    { "torso-length": { mm: 0, uncertaintyMm: 0 } },
    { "torso-length": [] },
    { arm: 1 },
  ),
);

/** Rows of which some fields are changed, taken away or added. */
export const nearlyRows: fc.Arbitrary<unknown> = fc
  .tuple(
    outcomeRows,
    fc.dictionary(
      fc.constantFrom(
        "v",
        "id",
        "at",
        "person",
        "product",
        "size",
        "outcome",
        "reason",
        "exchangedFor",
        "estimates",
        "more",
      ),
      fc.option(anything, { nil: undefined }),
      { maxKeys: 2, noNullPrototype: true },
    ),
  )
  .map(([row, changes]) => JSON.parse(JSON.stringify({ ...row, ...changes })));

/** Lines that are no rows; none of them names a person of {@link outcomeRows}, nor holds a line end. */
export const badLines: fc.Arbitrary<string> = fc.constantFrom(
  "",
  "{",
  "[1]",
  '{"v":7}',
  '{"v":1,"person":"z',
  "\u0000",
);
