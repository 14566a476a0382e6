import { expect, test } from "vitest";
import { type Key, quarterRound, scramble } from "../../packages/statistics/src/scramble.ts";

const KEY: Key = [1, 2, 3, 4];

function bitsApart(a: Key, b: Key): number {
  return a.reduce((sum, word, i) => {
    const different = (word ^ (b[i] ?? 0)) >>> 0;
    return sum + different.toString(2).replaceAll("0", "").length;
  }, 0);
}

test("no words leave the key as it was", () => {
  expect(scramble(KEY, [])).toEqual(KEY);
});

test("zeros stay zeros in the quarter round, which only adds, turns and compares bits", () => {
  expect(quarterRound([0, 0, 0, 0])).toEqual([0, 0, 0, 0]);
});

test("one bit of a word changes about half of the 128 bits of the key", () => {
  const apart = Array.from({ length: 32 }, (_, bit) =>
    bitsApart(scramble(KEY, [0]), scramble(KEY, [1 << bit])),
  );
  // 64 ± 5.7 each; the mean of 32 of them is 64 ± 1.
  expect(Math.min(...apart)).toBeGreaterThan(35);
  expect(Math.max(...apart)).toBeLessThan(93);
  const mean = apart.reduce((sum, count) => sum + count, 0) / apart.length;
  expect(Math.abs(mean - 64)).toBeLessThan(5);
});

test("the order of words matters", () => {
  expect(scramble(KEY, [1, 2])).not.toEqual(scramble(KEY, [2, 1]));
});
