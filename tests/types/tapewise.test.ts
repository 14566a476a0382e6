import { type charts, type fit, type measurement, units } from "tapewise";
import { type BatchLine, type ChoiceLine, chooseLine, type PersonLine, safeReadPerson } from "tapewise/batch";
import { personJsonSchema } from "tapewise/schema";
import { expect, expectTypeOf, test } from "vitest";

test("a namespace holds its package's functions and types", () => {
  expectTypeOf(units.parseLength).returns.toEqualTypeOf<units.LengthReading>();
  expectTypeOf<fit.Recommendation["estimates"][number]>().toEqualTypeOf<measurement.Estimate>();
  expectTypeOf<charts.SizeChart["sizes"][number]>().toEqualTypeOf<charts.Size>();
  expect(units.parseLength("43.2 cm").mm).toBe(432);
});

test("a line is a choice or issues, and the type checker asks which", () => {
  const answer: BatchLine = chooseLine("{", []);
  // @ts-expect-error: an issue line has no choices
  expect(answer.choices).toBeUndefined();
  if ("choices" in answer) expectTypeOf(answer).toEqualTypeOf<ChoiceLine>();
  expect(answer.issues?.[0]?.code).toBe("batch-line-not-json");
});

test("a person needs readings, of dimensions that are known", () => {
  // @ts-expect-error: readings are missing
  const without: PersonLine = { id: "a" };
  // @ts-expect-error: no such dimension
  const unknown: PersonLine = { readings: { "arm-length": ["70 cm"] } };
  // @ts-expect-error: no such cut
  const cut: PersonLine = { cut: "boys", readings: {} };
  expect([without, unknown, cut]).toHaveLength(3);
  // @ts-expect-error: text has to be read first
  expect(() => safeReadPerson("{}")).toThrow(TypeError);
});

test("a schema is data that nobody changes", () => {
  const schema = personJsonSchema();
  // @ts-expect-error: read only
  schema.title = "mine";
  expect(personJsonSchema().title).toBe("Tapewise person");
});
