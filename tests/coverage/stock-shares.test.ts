import { type StockShares, stockShares } from "@tapewise/coverage";
import { atLeast, atMost, interval } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { chartOf, counted, crew, torsoChart, uniform } from "./crew.ts";

const shares = (...call: Parameters<typeof stockShares>): StockShares => unwrap(stockShares(...call));
const ofPeople = (...call: Parameters<typeof stockShares>) =>
  shares(...call).sizes.map((size) => Number(size.ofPeople.toFixed(9)));

test("two that touch at the mean are half of the order each", () => {
  const { sizes, unserved } = shares(
    chartOf({ S: { "torso-length": atMost(430) }, M: { "torso-length": atLeast(430) } }),
    crew(),
  );
  for (const size of sizes) expect(size.ofOrder).toBeCloseTo(0.5, 14);
  expect(unserved).toBeCloseTo(0, 14);
});

test("an overlap is split where both leave as much room: halfway between its ends", () => {
  // One person a millimetre from 400 to 500: S alone to 430, halves of 430–450, M alone to 490.
  expect(ofPeople(torsoChart({ S: [400, 450], M: [430, 490] }), uniform())).toEqual([0.4, 0.5]);
  // A short one within a long one: it has more room between none, as its ends are the nearer ones.
  expect(ofPeople(torsoChart({ S: [440, 460], L: [400, 500] }), uniform())).toEqual([0, 1]);
  // Three at once: M begins to have more room than S at (420 + 450)/2 = 435, and L than M at (440 + 480)/2 = 460.
  expect(ofPeople(torsoChart({ S: [400, 450], M: [420, 480], L: [440, 500] }), uniform())).toEqual([
    0.35, 0.25, 0.4,
  ]);
});

test("what is equal in all goes to the first by name, whatever the order of the chart", () => {
  expect(ofPeople(torsoChart({ B: [400, 500], A: [400, 500] }), uniform())).toEqual([0, 1]);
  expect(ofPeople(torsoChart({ A: [400, 500], B: [400, 500] }), uniform())).toEqual([1, 0]);
});

test("people whom no size fits are told and not ordered for", () => {
  const { sizes, unserved } = shares(torsoChart({ S: [400, 420], M: [420, 440] }), uniform());
  expect(sizes.map((size) => size.ofOrder)).toEqual([0.5, 0.5]);
  expect(unserved).toBeCloseTo(0.6, 12);
  const nobody = shares(torsoChart({ S: [100, 120] }), counted([430]));
  expect(nobody.sizes[0]?.ofOrder).toBe(0);
  expect(nobody.unserved).toBe(1);
});

test("a second dimension counts for fitting, the main one for room", () => {
  const chart = chartOf({
    S: { "torso-length": interval(380, 480), "hip-girth": atMost(1000) },
    M: { "torso-length": interval(430, 530), "hip-girth": atLeast(1000) },
  });
  const { sizes } = shares(chart, crew());
  // Independent halves: S holds P(380 to 480) / 2 = 0.4772…, M P(430 to 530) / 2, pnorm(4) − 1/2 over 2.
  expect(sizes[0]?.ofPeople).toBeCloseTo(0.4772498680518208, 13);
  expect(sizes[1]?.ofPeople).toBeCloseTo((0.9999683287581669 - 0.5) / 2, 13);
});

test("charts that go by different dimensions cannot share an order", () => {
  const outcome = stockShares(
    [torsoChart({ S: [400, 420] }), chartOf({ S: { "hip-girth": atMost(1000) } })],
    crew(),
  );
  expect(outcome.ok).toBe(false);
  expect(outcome.issues.map(({ code }) => code)).toEqual(["coverage-charts-differ"]);
  expect(() => stockShares([], crew())).toThrow(InvalidArgumentError);
});
