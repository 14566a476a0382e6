import type { ChartDimension } from "@tapewise/charts";
import {
  type Belief,
  type BuildFeature,
  type Comparison,
  compare,
  defaultPolicy,
  type FitPolicy,
  formBeliefs,
  holdAgainst,
  type NextStepCode,
  type nextStepTexts,
  type Person,
  type Reason,
  type ReasonCode,
  type Recommendation,
  type reasonTexts,
  recommend,
  type Verdict,
} from "@tapewise/fit";
import { interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { InvalidArgumentError, type Outcome } from "@tapewise/outcome";
import { expect, expectTypeOf, test } from "vitest";
import { answer, sureEstimate, torsoChart } from "../fit/cases.ts";

const person: Person = { estimates: [sureEstimate("torso-length", 450, 5)] };
const chart = torsoChart({ M: [420, 480] });

test("an answer may be missing, and says so in its type", () => {
  expectTypeOf(recommend(person, chart, { unit: "cm" })).toEqualTypeOf<Outcome<Recommendation>>();
  expectTypeOf(compare(person, [chart], { unit: "cm" })).toEqualTypeOf<Outcome<Comparison>>();
  expectTypeOf(formBeliefs([], undefined).of("torso-length")).toEqualTypeOf<Belief | undefined>();
  const outcome = recommend(person, chart, { unit: "cm" });
  // @ts-expect-error a failure has no value
  expect(outcome.value.pick).toBe("M");
});

test("the unit of the sentences must be named, and be one of two", () => {
  // @ts-expect-error no default unit
  expect(() => recommend(person, chart)).toThrow(InvalidArgumentError);
  // @ts-expect-error nor in options that leave it out
  expect(() => compare(person, [chart], {})).toThrow('unit must be "cm" or "in", but received nothing');
  // @ts-expect-error millimetres are for facts
  expect(() => recommend(person, chart, { unit: "mm" })).toThrow(InvalidArgumentError);
});

test("codes, verdicts and features of build are closed lists", () => {
  expectTypeOf<keyof typeof reasonTexts>().toEqualTypeOf<ReasonCode>();
  expectTypeOf<keyof typeof nextStepTexts>().toEqualTypeOf<NextStepCode>();
  const verdict: Verdict = answer(person, chart).verdict;
  // @ts-expect-error there is no such verdict
  const wrong: Verdict = "maybe";
  // @ts-expect-error there is no such feature
  const feature: BuildFeature = "long-legs";
  expect([verdict, wrong, feature]).toEqual(["fits", "maybe", "long-legs"]);
});

test("a reason of one kind is no reason of the other", () => {
  const [reason] = answer(person, chart).reasons;
  expectTypeOf(reason).toEqualTypeOf<Reason<ReasonCode> | undefined>();
  // @ts-expect-error a reason is no next step
  const step: Reason<NextStepCode> | undefined = reason;
  expect(step?.code).toBe("most-probable");
});

test("what is believed is a dimension of the body, what is charted may be an unstated girth", () => {
  expectTypeOf<Belief["dimension"]>().toEqualTypeOf<DimensionId>();
  expectTypeOf<Recommendation["beliefs"][number]["dimension"]>().toEqualTypeOf<ChartDimension>();
  // @ts-expect-error nobody reads an unstated girth
  expect(formBeliefs([], undefined).of("unstated-hip-girth")).toBeUndefined();
});

test("a policy is given whole, so that no figure is left to chance", () => {
  // @ts-expect-error the other figures are missing
  const part: FitPolicy = { tieLoss: 0.1 };
  const whole: FitPolicy = { ...defaultPolicy, tieLoss: 0.1 };
  expect(Object.keys(whole).length).toBeGreaterThan(Object.keys(part).length);
});

test("an answer cannot be changed", () => {
  const recommendation = answer(person, chart);
  // @ts-expect-error read only
  recommendation.pick = "S";
  // @ts-expect-error a list that cannot grow
  expect(typeof recommendation.sizes.push).toBe("function");
});

test("a length is uncertain in three figures", () => {
  // @ts-expect-error without degrees of freedom nobody knows how sure the scale is
  expect(() => holdAgainst({ meanMm: 450, sdMm: 5 }, interval(420, 480))).toThrow("degreesOfFreedom");
});
