import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { empiricalJoint, normalJoint } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const about = { label: "a crew", source: "invented", caveat: "" };
const people = [
  [1640, 405],
  [1700, 418],
  [1720, 431],
  [1780, 446],
];
const crew = empiricalJoint({ about, variables: ["stature", "torso-length"], people });

describe("empiricalJoint", () => {
  test("has the moments of its people, divided by their number", () => {
    expect(crew.mean).toEqual([1710, 425]);
    // Deviations −70, −10, 10, 70 and −20, −7, 6, 21.
    expect(crew.covariance[0]?.[0]).toBeCloseTo(10_000 / 4, 9);
    expect(crew.covariance[0]?.[1]).toBeCloseTo((1400 + 70 + 60 + 1470) / 4, 9);
    expect(crew.covariance[1]?.[1]).toBeCloseTo((400 + 49 + 36 + 441) / 4, 9);
    expect(crew.effectivePeople).toBeCloseTo(4, 12);
  });

  test("moves everybody along the regression, keeping residuals", () => {
    // Slope 750/2500 = 0.3: residuals 405 + 21 and so on at the mean; 15 more at 1760.
    const tall = crew.conditional({ stature: millimetres(1760) });
    expect(tall.variables).toEqual(["torso-length"]);
    const expected = [405 + 0.3 * 120, 418 + 0.3 * 60, 431 + 0.3 * 40, 446 - 0.3 * 20];
    tall.people.forEach((person, n) => {
      expect(person[0]).toBeCloseTo(expected[n] ?? 0, 9);
    });
    expect(tall.about.label).toBe("a crew, stature 1760 mm");
  });

  test("comes to mean and covariance of a normal model given the same", () => {
    const three = empiricalJoint({
      about,
      variables: ["stature", "torso-length", "waist-girth"],
      people: [
        [1640, 405, 800],
        [1700, 418, 910],
        [1720, 431, 790],
        [1780, 446, 860],
        [1690, 440, 1000],
      ],
      weights: [1, 2, 1, 1, 3],
    });
    const normal = normalJoint({ ...three });
    const known = { stature: millimetres(1750), "waist-girth": millimetres(870) };
    const [ours, theirs] = [three.conditional(known), normal.conditional(known)];
    expect(ours.mean[0]).toBeCloseTo(theirs.mean[0] ?? 0, 8);
    expect(ours.covariance[0]?.[0]).toBeCloseTo(theirs.covariance[0]?.[0] ?? 0, 7);
  });

  test("counts people within bounds, and minds whether a bound belongs", () => {
    const box = { stature: interval(1700, 1780), "torso-length": interval(418, 446) };
    expect(crew.boxProbability(box).probability).toBe(0.75);
    const open = { stature: interval(1700, 1780, { toClosed: false }) };
    expect(crew.boxProbability(open).probability).toBe(0.5);
    // √(p (1 − p) / n)
    expect(crew.boxProbability(open).error).toBeCloseTo(0.25, 12);
    expect(crew.boxProbability({})).toEqual({ probability: 1, error: 0 });
    const within = crew.within(open);
    expect(within.people).toEqual([people[1], people[2]]);
    expect(within.weights).toEqual([0.5, 0.5]);
  });

  test("counts people by weight", () => {
    const weighted = empiricalJoint({ about, variables: crew.variables, people, weights: [0, 1, 1, 2] });
    expect(weighted.people).toHaveLength(3);
    expect(weighted.weights).toEqual([0.25, 0.25, 0.5]);
    // 1 / (1/16 + 1/16 + 1/4)
    expect(weighted.effectivePeople).toBeCloseTo(8 / 3, 12);
    expect(weighted.mean[0]).toBe(1745);
    expect(weighted.distribution("stature").quantile(0.5)).toBe(1720);
    const random = createRandom(3);
    const drawn = Array.from({ length: 2000 }, () => weighted.sample(random)[0]);
    const tallest = drawn.filter((stature) => stature === 1780).length;
    expect(Math.abs(tallest / 2000 - 0.5)).toBeLessThan(4 * Math.sqrt(0.25 / 2000));
  });

  test("shows fewer variables in the order asked for", () => {
    expect(crew.marginal(["torso-length"]).people).toEqual([[405], [418], [431], [446]]);
    expect(crew.marginal(["torso-length", "stature"]).people[0]).toEqual([405, 1640]);
  });

  test("has a kernel density, one bump for one distant person", () => {
    const apart = empiricalJoint({ about, variables: ["stature"], people: [[1000], [2000]] });
    // Scott's width s n^(−1/5) = 500 · 2^(−1/5); half the people sit at the point, the others far off.
    const width = 500 * 2 ** -0.2;
    const bump = (z: number) => Math.exp((-z * z) / 2) / (width * Math.sqrt(2 * Math.PI));
    expect(apart.logDensity({ stature: millimetres(2000) })).toBeCloseTo(
      Math.log((bump(0) + bump(1000 / width)) / 2),
      12,
    );
    const alike = empiricalJoint({ about, variables: ["stature"], people: [[1700], [1700]] });
    expect(alike.logDensity({ stature: millimetres(1600) })).toBe(Number.NEGATIVE_INFINITY);
  });

  test("refuses what it is not", () => {
    const make = (rows: number[][], weights?: number[]) =>
      empiricalJoint({ about, variables: crew.variables, people: rows, ...(weights && { weights }) });
    expect(() => make([])).toThrow(InvalidArgumentError);
    expect(() => make([[1700]])).toThrow(InvalidArgumentError);
    expect(() => make([[1700, Number.NaN]])).toThrow(InvalidArgumentError);
    expect(() => make([[1700, 430]], [0])).toThrow(InvalidArgumentError);
    expect(() => crew.within({ stature: interval(2000, 2100) })).toThrow(InvalidArgumentError);
    const all = { stature: millimetres(1700), "torso-length": millimetres(430) };
    expect(() => crew.conditional(all)).toThrow(InvalidArgumentError);
    const alike = make([
      [1700, 420],
      [1700, 430],
    ]);
    expect(alike.conditional({ stature: millimetres(1700) }).people).toEqual([[420], [430]]);
    expect(() => alike.conditional({ stature: millimetres(1710) })).toThrow(InvalidArgumentError);
  });
});
