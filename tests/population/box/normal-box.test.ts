import { InvalidArgumentError } from "@tapewise/outcome";
import { normalBoxProbability } from "@tapewise/population";
import { normalCdf } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const INF = Number.POSITIVE_INFINITY;

function equicorrelated(size: number, rho: number): number[][] {
  return Array.from({ length: size }, (_, i) => Array.from({ length: size }, (__, j) => (i === j ? 1 : rho)));
}

function all(size: number, value: number): number[] {
  return new Array<number>(size).fill(value);
}

describe("normalBoxProbability", () => {
  test.each([1, 2, 3, 4, 5, 6, 7])("of %d independent variables is a product", (size) => {
    const { probability, error } = normalBoxProbability(
      all(size, -1),
      all(size, 0.5),
      equicorrelated(size, 0),
    );
    const one = normalCdf(0.5) - normalCdf(-1);
    expect(Math.abs(probability - one ** size)).toBeLessThanOrEqual(error + 1e-15);
    expect(error).toBeLessThan(1e-8);
  });

  // With correlation 1/2 any one of n + 1 exchangeable variables is the largest: 1 / (n + 1).
  test.each([2, 3, 4, 5, 6, 7])("that %d variables of correlation ½ all are below 0 is 1/(n + 1)", (size) => {
    const { probability, error } = normalBoxProbability(
      all(size, -INF),
      all(size, 0),
      equicorrelated(size, 0.5),
    );
    expect(Math.abs(probability - 1 / (size + 1))).toBeLessThanOrEqual(error);
    expect(error).toBeLessThan(1e-4);
  });

  test("without bounds is 1, and between equal ones 0", () => {
    expect(normalBoxProbability(all(4, -INF), all(4, INF), equicorrelated(4, 0.3))).toEqual({
      probability: 1,
      error: 0,
    });
    expect(normalBoxProbability([0, -1], [0, 1], equicorrelated(2, 0.3)).probability).toBe(0);
    expect(normalBoxProbability([], [], []).probability).toBe(1);
  });

  test("takes perfectly correlated variables for one, within the bounds of both", () => {
    const same = [
      [1, 1, 0],
      [1, 1, 0],
      [0, 0, 1],
    ];
    const both = normalBoxProbability([-1, -2, -INF], [2, 0.5, 0], same);
    expect(both.probability).toBeCloseTo((normalCdf(0.5) - normalCdf(-1)) / 2, 14);
    const opposite = [
      [1, -1],
      [-1, 1],
    ];
    expect(normalBoxProbability([-1, -1], [2, 1], opposite).probability).toBeCloseTo(
      normalCdf(1) - normalCdf(-1),
      14,
    );
    expect(normalBoxProbability([1, 1], [2, 2], opposite).probability).toBe(0);
  });

  test("manages variables that determine each other", () => {
    // Z = (X − Y) / √2 of two independent variables: X and Y within (−1, 1) leave Z within (−√2, √2).
    const half = Math.SQRT1_2;
    const tied = [
      [1, 0, half],
      [0, 1, -half],
      [half, -half, 1],
    ];
    const square = (normalCdf(1) - normalCdf(-1)) ** 2;
    const free = normalBoxProbability([-1, -1, -1.5], [1, 1, 1.5], tied);
    expect(Math.abs(free.probability - square)).toBeLessThan(1e-9);
    const upper = normalBoxProbability([-1, -1, 0], [1, 1, 3], tied);
    expect(Math.abs(upper.probability - square / 2)).toBeLessThan(1e-9);
    // A fourth, independent one only multiplies.
    const four = [...tied.map((row) => [...row, 0]), [0, 0, 0, 1]];
    const more = normalBoxProbability([-1, -1, 0, 0], [1, 1, 3, INF], four);
    expect(Math.abs(more.probability - square / 4)).toBeLessThanOrEqual(more.error + 1e-9);
  });

  test("leaves variables that determine each other to the end, wherever they stand", () => {
    // X, Y and (X − Y)/√2 among three independent ones: Y > 0 and X − Y > 0 is an eighth of the plane.
    const half = Math.SQRT1_2;
    const six = equicorrelated(6, 0);
    for (const [i, j, value] of [
      [1, 5, half],
      [3, 5, -half],
    ] as const) {
      (six[i] ?? [])[j] = value;
      (six[j] ?? [])[i] = value;
    }
    const lower = [-1, -INF, 0, 0, -2, 0];
    const upper = [1, INF, INF, INF, 2, INF];
    const { probability, error } = normalBoxProbability(lower, upper, six);
    const others = (2 * normalCdf(1) - 1) * 0.5 * (2 * normalCdf(2) - 1);
    expect(Math.abs(probability - others / 8)).toBeLessThanOrEqual(error + 1e-12);
    expect(error).toBeLessThan(1e-5);
  });

  test("is there far out too", () => {
    const { probability } = normalBoxProbability([10, 10, 10], [20, 20, 20], equicorrelated(3, 0));
    // Φ(−10)³, 7.61985 × 10⁻²⁴ each.
    expect(probability / 7.61985302416e-24 ** 3).toBeCloseTo(1, 6);
  });

  test("gives the same answer each time", () => {
    const once = () => normalBoxProbability(all(7, -1), all(7, 1.2), equicorrelated(7, 0.4));
    expect(once()).toEqual(once());
  });

  test("refuses what is no box or no correlation matrix", () => {
    const two = equicorrelated(2, 0.5);
    expect(() => normalBoxProbability([0], [1, 1], two)).toThrow(InvalidArgumentError);
    expect(() => normalBoxProbability([0, 2], [1, 1], two)).toThrow(InvalidArgumentError);
    expect(() => normalBoxProbability([0, Number.NaN], [1, 1], two)).toThrow(InvalidArgumentError);
    expect(() => normalBoxProbability([0, 0], [1, 1], [[1, 0.5]])).toThrow(InvalidArgumentError);
    expect(() =>
      normalBoxProbability(
        [0, 0],
        [1, 1],
        [
          [1, 0.5],
          [0.4, 1],
        ],
      ),
    ).toThrow(InvalidArgumentError);
    expect(() =>
      normalBoxProbability(
        [0, 0],
        [1, 1],
        [
          [2, 0.5],
          [0.5, 2],
        ],
      ),
    ).toThrow(InvalidArgumentError);
    expect(() => normalBoxProbability(all(3, 0), all(3, 1), equicorrelated(3, -0.9))).toThrow(
      InvalidArgumentError,
    );
  });
});
