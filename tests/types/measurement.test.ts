import type { DimensionId, MeasuredBy, Tool } from "@tapewise/landmarks";
import {
  type Anticipation,
  anticipateUncertainty,
  assumeConditions,
  type BudgetLine,
  type Conditions,
  combineUncertainties,
  type ErrorDefaults,
  type Estimate,
  type EstimateInput,
  errorDefaults,
  type KnownConditions,
  measurementIssues,
  type Prior,
  parseEstimate,
  readingsFor,
  type StatedError,
  safeEstimate,
  safeReadReadings,
  stateEstimate,
} from "@tapewise/measurement";
import { InvalidArgumentError, type Outcome } from "@tapewise/outcome";
import { type LengthReading, type Millimetres, millimetres, parseLength } from "@tapewise/units";
import { expect, expectTypeOf, test } from "vitest";

const readings = [parseLength("43.2 cm")];
const estimate = parseEstimate({ dimension: "torso-length", readings });

test("what may be missing says so in its type", () => {
  expectTypeOf(safeEstimate).returns.toEqualTypeOf<Outcome<Estimate>>();
  expectTypeOf(safeReadReadings).returns.toEqualTypeOf<Outcome<readonly LengthReading[]>>();
  expectTypeOf(readingsFor).returns.toEqualTypeOf<number | undefined>();
  expectTypeOf<Estimate["spread"]["sampleMm"]>().toEqualTypeOf<number | undefined>();
  expectTypeOf<Estimate["mm"]>().toEqualTypeOf<Millimetres>();

  // @ts-expect-error an outcome has no value before it is known to be one
  expect(safeEstimate({ dimension: "torso-length", readings }).value.mm).toBe(432);
});

test("an estimate is made of readings with units, never of bare numbers or texts", () => {
  // @ts-expect-error nobody knows the unit of 432
  expect(() => safeEstimate({ dimension: "torso-length", readings: [432] })).toThrow(InvalidArgumentError);
  // @ts-expect-error texts are read first, so that what cannot be read is reported
  expect(() => safeEstimate({ dimension: "torso-length", readings: ["43.2 cm"] })).toThrow(
    InvalidArgumentError,
  );
  // @ts-expect-error a length without the step it was read to
  const incomplete: LengthReading = { mm: millimetres(432), unit: "cm", text: "43.2 cm" };
  expect(() => safeEstimate({ dimension: "torso-length", readings: [incomplete] })).toThrow(
    InvalidArgumentError,
  );
});

test("dimensions, tools and hands are closed lists", () => {
  expectTypeOf<EstimateInput["dimension"]>().toEqualTypeOf<DimensionId>();
  expectTypeOf<Conditions["tool"]>().toEqualTypeOf<Tool | undefined>();
  expectTypeOf<KnownConditions["measuredBy"]>().toEqualTypeOf<MeasuredBy>();
  // @ts-expect-error there is no such dimension
  expect(() => safeEstimate({ dimension: "leg-length", readings })).toThrow(InvalidArgumentError);
  // @ts-expect-error there is no such tool
  expect(() => assumeConditions({ tool: "laser" }, 300)).toThrow(InvalidArgumentError);
  // @ts-expect-error nor anybody else to hold it
  expect(() => assumeConditions({ measuredBy: "cat" }, 300)).toThrow(InvalidArgumentError);
  // @ts-expect-error yes is no boolean
  expect(() => assumeConditions({ landmarksFoundAfresh: "yes" }, 300)).toThrow(InvalidArgumentError);
});

test("a condition is left out, not set to undefined", () => {
  // @ts-expect-error leave `tool` out instead
  const conditions: Conditions = { tool: undefined };
  expect(assumeConditions(conditions, 300).assumed).toContain("tool");
});

test("a stated error is stated in full", () => {
  // @ts-expect-error the step is missing
  const error: StatedError = { biasMm: 6, repeatMm: 8 };
  expect(safeEstimate({ dimension: "torso-length", readings, error }).ok).toBe(false);
});

test("a table of defaults is whole", () => {
  const { girth: _girth, ...others } = errorDefaults.hands;
  // @ts-expect-error a kind of dimension is missing
  const defaults: ErrorDefaults = { ...errorDefaults, hands: others };
  expect(() => safeEstimate({ dimension: "torso-length", readings, defaults })).toThrow(InvalidArgumentError);
});

test("what comes back cannot be changed", () => {
  expectTypeOf(estimate.budget).toEqualTypeOf<readonly BudgetLine[]>();
  const copy: Estimate = { ...estimate };
  // @ts-expect-error an estimate is read only
  copy.uncertaintyMm = 0;
  expect(estimate.uncertaintyMm).toBeGreaterThan(0);
  // @ts-expect-error so is its list of readings
  expect(typeof estimate.readings.push).toBe("function");
});

test("no unit is a default: the writer of a sentence names it", () => {
  // @ts-expect-error cm or in
  expect(() => stateEstimate(estimate)).toThrow(TypeError);
  // @ts-expect-error nobody writes a torso length in feet
  expect(stateEstimate(estimate, { unit: "ft" })).toContain(" ft");
});

test("an anticipation names the conditions it is for", () => {
  const incomplete = { dimension: "torso-length", lengthMm: 430, count: 3, stepMm: 1 } as const;
  // @ts-expect-error who will measure, and with what?
  const anticipation: Anticipation = incomplete;
  expect(() => anticipateUncertainty(anticipation)).toThrow(InvalidArgumentError);
});

test("components have degrees of freedom", () => {
  // @ts-expect-error known is Infinity, and has to be said
  expect(() => combineUncertainties([{ uncertainty: 1 }])).toThrow(InvalidArgumentError);
});

test("codes are known to the type checker", () => {
  expectTypeOf<keyof typeof measurementIssues>().toExtend<string>();
  // @ts-expect-error there is no such code
  expect(measurementIssues["reading-strange"]).toBeUndefined();
});

test("a prior names dimensions, not any text", () => {
  expectTypeOf<Prior["dimensions"]>().toEqualTypeOf<readonly DimensionId[]>();
  expect(estimate.dimension).toBe("torso-length");
});
