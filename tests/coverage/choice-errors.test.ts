import { type ChoiceErrors, choiceErrors } from "@tapewise/coverage";
import { atLeast, atMost, interval } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { bivariateNormalBox } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { chartOf, counted, crew, torsoChart } from "./crew.ts";

const measuring = { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 } as const;
const errors = (...call: Parameters<typeof choiceErrors>): ChoiceErrors => unwrap(choiceErrors(...call));
const halves = chartOf({ S: { "torso-length": atMost(430) }, M: { "torso-length": atLeast(430) } });

describe("one dimension, in closed form", () => {
  test("two sizes that touch at the mean: wrong for atan(u/σ)/π", () => {
    // Length and estimate are bivariate normal with tan of the angle u/σ; they fall on different sides of the mean with
    // probability angle/π (Sheppard 1899).
    const { wrong, right, unserved, judged, method } = errors(halves, crew(), measuring);
    const u = judged[0]?.uncertaintyMm ?? 0;
    expect(u).toBeGreaterThan(3);
    expect(wrong).toBeCloseTo(Math.atan(u / 25) / Math.PI, 5);
    expect(right + wrong + unserved).toBeCloseTo(1, 12);
    expect(unserved).toBeCloseTo(0, 12);
    expect(method).toBe("summed");
  });

  test("the share given a size and fitting it is a bivariate normal box", () => {
    const { sizes, judged, unserved } = errors(
      torsoChart({ S: [390, 430], M: [430, 470] }),
      crew(),
      measuring,
    );
    const u = judged[0]?.uncertaintyMm ?? 0;
    const spread = Math.hypot(25, u);
    const given = sizes[0];
    // By symmetry S is picked from estimates up to the mean.
    const fitting = bivariateNormalBox(-40 / 25, 0, Number.NEGATIVE_INFINITY, 0, 25 / spread);
    expect((given?.given ?? 0) - (given?.misfitted ?? 0)).toBeCloseTo(fitting, 5);
    // Beyond 1.6 standard deviations on either side: 2 pnorm(-1.6), recomputed with R 4.2.2.
    expect(unserved).toBeCloseTo(0.10959858339911599, 6);
  });

  test("whoever has help is wrong less often", () => {
    const helped = errors(halves, crew(), { ...measuring, conditions: { measuredBy: "helper" } });
    expect(helped.wrong).toBeLessThan(errors(halves, crew(), measuring).wrong);
  });

  test("one size for all is never wrong", () => {
    const { wrong, unserved, sizes } = errors(torsoChart({ S: [400, 420] }), counted([410, 450]), measuring);
    expect([wrong, unserved]).toEqual([0, 0.5]);
    expect(sizes[0]?.given).toBeCloseTo(1, 12);
  });
});

describe("several dimensions, drawn", () => {
  const both = chartOf({
    S: { "torso-length": atMost(430), "hip-girth": interval(0, 5000) },
    M: { "torso-length": atLeast(430), "hip-girth": interval(0, 5000) },
  });

  test("a second dimension that everybody fits changes nothing, within the error of drawing", () => {
    const drawn = errors(both, crew(0.3), measuring, { people: 4000 });
    const summed = errors(halves, crew(), measuring);
    expect(drawn.method).toBe("drawn");
    expect(drawn.standardError).toBeGreaterThan(0);
    expect(Math.abs(drawn.wrong - summed.wrong)).toBeLessThan(4 * drawn.standardError);
    expect(drawn.right + drawn.wrong + drawn.unserved).toBeCloseTo(1, 12);
    expect(drawn.judged).toHaveLength(2);
  });

  test("the same seed draws the same people", () => {
    const twice = [1, 1, 2].map((seed) => errors(both, crew(), measuring, { people: 500, seed }));
    expect(twice[0]).toEqual(twice[1]);
    expect(twice[0]?.sizes).not.toEqual(twice[2]?.sizes);
  });
});

test("what cannot be judged is told, and a programmer's mistake throws", () => {
  const outcome = choiceErrors(chartOf({ S: { stature: atMost(1700) } }), crew(), measuring);
  expect(outcome.issues.map(({ code }) => code)).toEqual(["coverage-nothing-judged"]);
  expect(() => choiceErrors(halves, crew(), { ...measuring, readings: 0 })).toThrow(InvalidArgumentError);
  expect(() => choiceErrors(halves, crew(), measuring, { people: 0 })).toThrow(InvalidArgumentError);
});
