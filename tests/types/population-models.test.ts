import { interval } from "@tapewise/intervals";
import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import {
  type Box,
  type Distribution,
  type EmpiricalJoint,
  empiricalJoint,
  type JointModel,
  type Known,
  type NormalJoint,
  priorFrom,
  referencePopulation,
  reweight,
  type SurveyMapping,
  truePercentiles,
  withLognormal,
} from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { expect, expectTypeOf, test } from "vitest";

const women = referencePopulation("women");

test("what is known of a person is lengths, and body mass in kilograms", () => {
  const known: Known = { stature: millimetres(1710), "mass-kg": 64 };
  expect(women.conditional(known).variables).not.toContain("stature");
  // @ts-expect-error 1710 what?
  const bare: Known = { stature: 1710 };
  expect(bare.stature).toBe(1710);
  // @ts-expect-error no such variable
  expect(() => women.conditional({ age: 30 })).toThrow(InvalidArgumentError);
});

test("a box is made of intervals of variables", () => {
  const box: Box = { "torso-length": interval(400, 450) };
  expect(women.boxProbability(box).probability).toBeGreaterThan(0);
  // @ts-expect-error two numbers are no interval
  const pair: Box = { "torso-length": [400, 450] };
  expect(Array.isArray(pair["torso-length"])).toBe(true);
});

test("models keep their kind through margins and conditions", () => {
  expectTypeOf(women.marginal(["stature"])).toEqualTypeOf<NormalJoint>();
  expectTypeOf(women.conditional({ stature: millimetres(1700) })).toEqualTypeOf<NormalJoint>();
  expectTypeOf(women.distribution("stature")).toEqualTypeOf<Distribution>();
  expectTypeOf(priorFrom(women, {})).toEqualTypeOf<Prior>();
  expectTypeOf<EmpiricalJoint>().toExtend<JointModel>();
  const about = { label: "x", source: "y", caveat: "" };
  const people = empiricalJoint({ about, variables: ["stature"], people: [[1700], [1720]] });
  expectTypeOf(reweight(women, women.marginal(["stature"]))).toEqualTypeOf<NormalJoint>();
  expectTypeOf(people.within({ stature: interval(1690, 1710) })).toEqualTypeOf<EmpiricalJoint>();
  // @ts-expect-error measured people are as they are
  expect(() => withLognormal(people, ["stature"])).not.toThrow();
});

test("figures do not go without a source, nor columns without a unit", () => {
  const mapping: SurveyMapping = {
    about: { label: "the crew", source: "measured", caveat: "" },
    dimensions: { stature: { column: "height", unit: "cm" } },
  };
  expect(mapping.about.source).toBe("measured");
  // @ts-expect-error no unit
  const unitless: SurveyMapping = { ...mapping, dimensions: { stature: { column: "height" } } };
  expect(unitless.weight).toBeUndefined();
  // @ts-expect-error nobody said where it comes from
  const sourceless: SurveyMapping = { ...mapping, about: { label: "the crew" } };
  expect(sourceless.about.label).toBe("the crew");
});

test("an observed shape needs a stream to resample with", () => {
  const readings = { values: [400, 410, 420], errorSd: 2 };
  const options = { shape: "observed", random: createRandom(1), replicates: 20 } as const;
  expect(truePercentiles(readings, [0.5], options)).toHaveLength(1);
  // @ts-expect-error no stream
  expect(() => truePercentiles(readings, [0.5], { shape: "observed" })).toThrow();
});

test("a model cannot be changed", () => {
  // @ts-expect-error read only
  expect(typeof women.mean.push).toBe("function");
  // @ts-expect-error read only
  expect(typeof women.variables.push).toBe("function");
});
