import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareUpperTail, createRandom, normalUpperTail } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const COUNT = 100_000;

describe("the numbers look like what they should be", () => {
  // Each statistic is compared with its own distribution; the seeds are fixed, so nothing flickers.
  test("uniform numbers fill a hundred classes evenly", () => {
    const random = createRandom(2024);
    const classes = new Array<number>(100).fill(0);
    for (let i = 0; i < COUNT; i += 1) {
      const at = Math.floor(random.uniform() * 100);
      classes[at] = (classes[at] ?? 0) + 1;
    }
    const expected = COUNT / 100;
    const chiSquare = classes.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    expect(chiSquareUpperTail(chiSquare, 99)).toBeGreaterThan(0.001);
    expect(chiSquareUpperTail(chiSquare, 99)).toBeLessThan(0.999);
  });

  test("normal numbers have mean 0 and variance 1", () => {
    const random = createRandom(2025);
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < COUNT; i += 1) {
      const z = random.normal();
      sum += z;
      squares += z * z;
    }
    expect(normalUpperTail(Math.abs(sum) / Math.sqrt(COUNT))).toBeGreaterThan(0.0005);
    expect(normalUpperTail(Math.abs(squares - COUNT) / Math.sqrt(2 * COUNT))).toBeGreaterThan(0.0005);
  });

  test("streams of neighbouring seeds and labels do not go together", () => {
    const root = createRandom(3);
    let seeds = 0;
    let forks = 0;
    for (let i = 0; i < 20_000; i += 1) {
      seeds += (createRandom(i).uniform() - 0.5) * (createRandom(i + 1).uniform() - 0.5);
      forks += (root.fork(i).uniform() - 0.5) * (root.fork(i + 1).uniform() - 0.5);
    }
    // Each product has mean 0 and variance 1/144.
    const deviation = Math.sqrt(20_000) / 12;
    expect(normalUpperTail(Math.abs(seeds) / deviation)).toBeGreaterThan(0.0005);
    expect(normalUpperTail(Math.abs(forks) / deviation)).toBeGreaterThan(0.0005);
  });

  test("whole numbers fall on every face of a die alike", () => {
    const random = createRandom(6);
    const faces = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 60_000; i += 1) {
      const face = random.integer(1, 6) - 1;
      faces[face] = (faces[face] ?? 0) + 1;
    }
    const chiSquare = faces.reduce((sum, count) => sum + (count - 10_000) ** 2 / 10_000, 0);
    expect(chiSquareUpperTail(chiSquare, 5)).toBeGreaterThan(0.001);
  });
});

test("labels of other kinds are other labels", () => {
  const random = createRandom(1);
  expect(random.fork(1).uniform()).not.toBe(random.fork("1").uniform());
  expect(random.fork("").uniform()).not.toBe(random.fork(0).uniform());
  expect(random.fork("ab").uniform()).not.toBe(random.fork("a").fork("b").uniform());
  expect(random.fork(1).uniform()).not.toBe(random.fork(1 + 2 ** 32).uniform());
});

test("a range of one number has one outcome", () => {
  expect(createRandom(1).integer(7, 7)).toBe(7);
});

test("ranges may be as wide as safe integers are", () => {
  const random = createRandom(1);
  const drawn = Array.from({ length: 200 }, () => random.integer(0, Number.MAX_SAFE_INTEGER));
  expect(drawn.every(Number.isSafeInteger)).toBe(true);
  expect(Math.max(...drawn)).toBeGreaterThan(2 ** 52);
  expect(drawn.some((whole) => whole % 2 === 1)).toBe(true);
});

test.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])("%d is no seed and no label", (seed) => {
  expect(() => createRandom(seed)).toThrow(new InvalidArgumentError("seed", seed, "a safe integer"));
  expect(() => createRandom(1).fork(seed)).toThrow(new InvalidArgumentError("label", seed, "a safe integer"));
});

test("ranges that are none are refused", () => {
  const random = createRandom(1);
  expect(() => random.integer(0.5, 2)).toThrow(new InvalidArgumentError("low", 0.5, "a safe integer"));
  expect(() => random.integer(2, 1)).toThrow("high must be a safe integer from 2");
  expect(() => random.integer(-1, Number.MAX_SAFE_INTEGER)).toThrow("high must be");
  expect(() => random.integer(0, Number.NaN)).toThrow("high must be");
});
