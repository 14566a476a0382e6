import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { empiricalDistribution } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const crew = empiricalDistribution([431, 402, 415, 415]);

describe("empiricalDistribution", () => {
  test("counts people", () => {
    expect(crew.cumulative(401)).toBe(0);
    expect(crew.cumulative(402)).toBe(0.25);
    expect(crew.cumulative(415)).toBe(0.75);
    expect(crew.upperTail(415)).toBe(0.25);
    expect(crew.cumulative(1000)).toBe(1);
  });

  test("minds whether a bound belongs", () => {
    expect(crew.probability(interval(402, 415))).toBe(0.75);
    expect(crew.probability(interval(402, 415, { toClosed: false }))).toBe(0.25);
    expect(crew.probability(interval(402, 415, { fromClosed: false }))).toBe(0.5);
    expect(crew.probability(interval(Number.NEGATIVE_INFINITY, 414))).toBe(0.25);
  });

  test("has the least value that a share reaches for a quantile", () => {
    expect([0, 0.25, 0.2500001, 0.75, 0.76, 1].map((p) => crew.quantile(p))).toEqual([
      402, 402, 415, 415, 431, 431,
    ]);
    // Three tenths of ten people are three, though 0.3 · 10 is a little more in binary.
    const ten = empiricalDistribution([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(ten.quantile(0.3)).toBe(3);
    expect(ten.quantile(0.7)).toBe(7);
  });

  test("has moments that divide by the sum of the weights", () => {
    // Mean 1663/4; squares 13.75² + 0.75² + 0.75² + 15.25².
    expect(crew.mean).toBe(415.75);
    expect(crew.variance).toBeCloseTo(422.75 / 4, 10);
    const third = (-(13.75 ** 3) - 2 * 0.75 ** 3 + 15.25 ** 3) / 4;
    expect(crew.skewness).toBeCloseTo(third / (422.75 / 4) ** 1.5, 10);
  });

  test("counts a weight as so many people", () => {
    const weighted = empiricalDistribution([400, 410, 500], [3, 1, 0]);
    const plain = empiricalDistribution([400, 400, 400, 410]);
    expect(weighted.mean).toBe(plain.mean);
    expect(weighted.variance).toBeCloseTo(plain.variance, 12);
    expect(weighted.cumulative(400)).toBe(0.75);
    expect(weighted.quantile(1)).toBe(410);
    expect(weighted.parameters.people).toBe(2);
  });

  test("smooths its density with Silverman's width, and the density has area 1", () => {
    // 0.9 min(s, IQR/1.34) n^(−1/5), IQR 415 − 402.
    const s = Math.sqrt(422.75 / 4);
    expect(crew.parameters.kernelWidth).toBeCloseTo(0.9 * Math.min(s, 13 / 1.34) * 4 ** -0.2, 12);
    let area = 0;
    for (let x = 300; x < 530; x += 0.25) area += crew.density(x) * 0.25;
    expect(area).toBeCloseTo(1, 9);
  });

  test("of people who are all alike has no spread and a spike", () => {
    const alike = empiricalDistribution([400, 400]);
    expect([alike.sd, alike.skewness]).toEqual([0, 0]);
    expect(alike.density(400)).toBe(Number.POSITIVE_INFINITY);
    expect(alike.density(401)).toBe(0);
  });

  test("draws its own people", () => {
    const random = createRandom(9);
    const drawn = new Set(Array.from({ length: 200 }, () => crew.sample(random)));
    expect([...drawn].sort()).toEqual([402, 415, 431]);
  });

  test("refuses samples and weights that are none", () => {
    expect(() => empiricalDistribution([])).toThrow(InvalidArgumentError);
    expect(() => empiricalDistribution([1, Number.NaN])).toThrow(InvalidArgumentError);
    expect(() => empiricalDistribution([1, 2], [1])).toThrow(InvalidArgumentError);
    expect(() => empiricalDistribution([1, 2], [0, 0])).toThrow(InvalidArgumentError);
    expect(() => empiricalDistribution([1, 2], [1, -1])).toThrow(InvalidArgumentError);
    expect(() => crew.quantile(Number.NaN)).toThrow(InvalidArgumentError);
    expect(() => crew.cumulative(Number.NaN)).toThrow(InvalidArgumentError);
  });
});
