import {
  createStudy,
  parseStudy,
  type Study,
  type StudyReport,
  safeParseStudy,
  safeTechnicalError,
  summariseStudy,
  type TechnicalError,
  type Tem,
} from "@tapewise/measurement";
import type { Outcome } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { expect, expectTypeOf, test } from "vitest";

const study = parseStudy("subject,A1 (mm),A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n");

test("what a study may not tell says so in its type", () => {
  expectTypeOf(safeParseStudy).returns.toEqualTypeOf<Outcome<Study>>();
  expectTypeOf(safeTechnicalError).returns.toEqualTypeOf<Outcome<TechnicalError>>();
  expectTypeOf<TechnicalError["inter"]>().toEqualTypeOf<Tem | undefined>();
  expectTypeOf<StudyReport["precision"]>().not.toEqualTypeOf<NonNullable<StudyReport["precision"]>>();
  // @ts-expect-error an outcome has no value before it is known to be one
  expect(safeTechnicalError(study).value.intra).toBeDefined();
  // @ts-expect-error one measurer leaves the error between measurers unknown
  expect(() => summariseStudy(study).technicalError.inter.mm).toThrow(TypeError);
});

test("lengths are millimetres, and a study cannot be changed", () => {
  const cell = { subject: "mia", measurer: "A", repeat: 1 };
  expect(createStudy({ readings: [{ ...cell, mm: millimetres(430) }] }).readings).toHaveLength(1);
  // @ts-expect-error a bare number has no unit
  expect(createStudy({ readings: [{ ...cell, mm: 430 }] }).readings).toHaveLength(1);
  // @ts-expect-error readings are read only
  expect(() => study.readings.push).not.toThrow();
});

test("options are those that are known", () => {
  // @ts-expect-error there is no such unit here
  expect(() => parseStudy("a", { unit: "yd" })).toThrow();
  // @ts-expect-error there is no such layout
  expect(() => parseStudy("a", { layout: "round" })).toThrow();
  // @ts-expect-error there is no such dimension
  expect(() => parseStudy("a", { dimension: "nose" })).toThrow();
});
