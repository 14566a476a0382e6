import {
  anticipateUncertainty,
  type ErrorDefaults,
  errorDefaults,
  safeEstimate,
} from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { readingsOf } from "./readings.ts";

const changed = (change: object) => ({ ...errorDefaults, ...change }) as ErrorDefaults;
const withTape = (change: object) =>
  changed({ tools: { ...errorDefaults.tools, tape: { ...errorDefaults.tools.tape, ...change } } });
const withGirth = (self: unknown) =>
  changed({ hands: { ...errorDefaults.hands, girth: { ...errorDefaults.hands.girth, self } } });

describe("a table of defaults", () => {
  test.each<[string, ErrorDefaults, string]>([
    [
      "two degrees of freedom",
      changed({ degreesOfFreedom: 2 }),
      "defaults.degreesOfFreedom must be a number above 2, but received 2",
    ],
    ["no degrees of freedom", changed({ degreesOfFreedom: 0 }), "defaults.degreesOfFreedom"],
    [
      "degrees of freedom that are no number",
      changed({ degreesOfFreedom: Number.NaN }),
      "defaults.degreesOfFreedom",
    ],
    ["degrees of freedom as text", changed({ degreesOfFreedom: "8" }), "defaults.degreesOfFreedom"],
    ["a rule without a length", changed({ ruleLengthMm: 0 }), "defaults.ruleLengthMm"],
    ["an endless rule", changed({ ruleLengthMm: Number.POSITIVE_INFINITY }), "defaults.ruleLengthMm"],
    ["no hands", changed({ hands: undefined }), 'defaults.hands["length along the body"].self.handlingMm'],
    ["half a hand", withGirth({ handlingMm: 1, findingMm: 1 }), 'defaults.hands["girth"].self.lastingMm'],
    [
      "a negative error",
      withGirth({ handlingMm: -1, findingMm: 1, lastingMm: 1 }),
      'defaults.hands["girth"].self.handlingMm must be a number of millimetres from 0 to 1000000, but received -1',
    ],
    [
      "an error that is no number",
      withGirth({ handlingMm: 1, findingMm: Number.NaN, lastingMm: 1 }),
      'defaults.hands["girth"].self.findingMm',
    ],
    ["no tools", changed({ tools: {} }), 'defaults.tools["tape"].scaleHalfWidth'],
    [
      "a scale off by all of it",
      withTape({ scaleHalfWidth: 1 }),
      'defaults.tools["tape"].scaleHalfWidth must be a part of the length, from 0 to below 1, but received 1',
    ],
    [
      "a joint without end",
      withTape({ jointMm: Number.POSITIVE_INFINITY }),
      'defaults.tools["tape"].jointMm',
    ],
  ])("with %s is refused, whether it is used or not", (_what, defaults, message) => {
    for (const attempt of [
      () => safeEstimate({ dimension: "torso-length", readings: readingsOf("43 cm"), defaults }),
      () =>
        anticipateUncertainty({
          dimension: "torso-length",
          lengthMm: 430,
          count: 3,
          stepMm: 1,
          conditions: {},
          defaults,
        }),
    ]) {
      expect(attempt).toThrow(InvalidArgumentError);
      expect(attempt).toThrow(message);
    }
  });

  test("with just over two degrees of freedom is taken", () => {
    const outcome = safeEstimate({
      dimension: "torso-length",
      readings: readingsOf("43 cm"),
      defaults: changed({ degreesOfFreedom: 2.001 }),
    });
    expect(outcome.ok && outcome.value.degreesOfFreedom).toBeGreaterThan(2.001);
  });
});
