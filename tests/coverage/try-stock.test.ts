import { tryStock } from "@tapewise/coverage";
import { atLeast, atMost } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { chartOf, counted, crew, torsoChart } from "./crew.ts";

const halves = chartOf({ S: { "torso-length": atMost(430) }, M: { "torso-length": atLeast(430) } });

test("four members, half and half, three of each: enough for 14 crews of 16", () => {
  const { enough, standardError, trials } = unwrap(
    tryStock(halves, crew(), { members: 4, counts: [3, 3], trials: 4000, seed: 2 }),
  );
  expect(Math.abs(enough - 14 / 16)).toBeLessThan(4 * Math.sqrt(((14 / 16) * (2 / 16)) / 4000));
  expect(standardError).toBeCloseTo(Math.sqrt((enough * (1 - enough)) / 4000), 14);
  expect(trials).toBe(4000);
});

test("others change theirs to make room", () => {
  // One person fits S only, one S and M, one M and L: with one of each there is a pack for everybody.
  const chart = torsoChart({ S: [400, 420], M: [410, 440], L: [430, 460] });
  const always = tryStock(chart, counted([405]), { members: 1, counts: [1, 0, 0], trials: 5 });
  expect(unwrap(always).enough).toBe(1);
  const among = counted([405, 415, 435]);
  const three = unwrap(tryStock(chart, among, { members: 3, counts: [3, 3, 3], trials: 200 }));
  expect(three.enough).toBe(1);
  // With one of each, of 27 crews these are too many for it: two or three who fit S only (7), all three S and M (1)
  // or all three M and L (1), and two who fit S and M beside one who fits S only (3).
  const one = unwrap(tryStock(chart, among, { members: 3, counts: [1, 1, 1], trials: 4000 }));
  expect(Math.abs(one.enough - 15 / 27)).toBeLessThan(4 * Math.sqrt(((15 / 27) * (12 / 27)) / 4000));
});

test("a programmer's mistakes throw", () => {
  expect(() => tryStock(halves, crew(), { members: 4, counts: [3] })).toThrow(InvalidArgumentError);
  expect(() => tryStock(halves, crew(), { members: 4, counts: [3, -1] })).toThrow(InvalidArgumentError);
  expect(() => tryStock(halves, crew(), { members: 0, counts: [3, 3] })).toThrow(InvalidArgumentError);
  expect(() => tryStock(halves, crew(), { members: 1, counts: [3, 3], trials: 0 })).toThrow(
    InvalidArgumentError,
  );
});
