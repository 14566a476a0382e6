import { fc, test } from "@fast-check/vitest";
import {
  bivariateNormalBox,
  bivariateNormalCdf,
  normalCdf,
  normalIntervalProbability,
} from "@tapewise/statistics";
import { expect } from "vitest";
import { anyRho, nearZ, ordered, relativeGap } from "./statistics-arbitraries.ts";

/** Twice the error that one bivariate probability may have. */
const ERROR = 6e-16;

/** Pairs of bounds, close to each other as often as not: there the strongly correlated case is hard. */
const pair = fc.oneof(
  fc.tuple(nearZ, nearZ),
  fc.tuple(nearZ, fc.double({ min: -25, max: 0, noNaN: true })).map(([h, power]) => [h, h + Math.exp(power)]),
  fc
    .tuple(nearZ, fc.double({ min: -25, max: 0, noNaN: true }))
    .map(([h, power]) => [h, -h + Math.exp(power)]),
) as fc.Arbitrary<[number, number]>;

test.prop([ordered(nearZ), ordered(nearZ)])(
  "law: without correlation a box is the product of its sides",
  ([l1, u1], [l2, u2]) => {
    const product = normalIntervalProbability(l1, u1) * normalIntervalProbability(l2, u2);
    expect(bivariateNormalBox(l1, u1, l2, u2, 0)).toBe(product);
  },
);

test.prop([pair, anyRho])("law: the two variables can change places", ([h, k], rho) => {
  expect(Math.abs(bivariateNormalCdf(h, k, rho) - bivariateNormalCdf(k, h, rho))).toBeLessThanOrEqual(ERROR);
});

test.prop([pair, anyRho])("law: a mirrored variable mirrors the correlation", ([h, k], rho) => {
  const both = bivariateNormalCdf(h, k, rho) + bivariateNormalCdf(h, -k, -rho);
  expect(Math.abs(both - normalCdf(h))).toBeLessThanOrEqual(ERROR);
});

test.prop([pair, anyRho])("law: a free variable leaves the distribution of the other", ([h, k], rho) => {
  const free = Number.POSITIVE_INFINITY;
  expect(Math.abs(bivariateNormalCdf(h, free, rho) - normalCdf(h))).toBeLessThanOrEqual(ERROR);
  expect(Math.abs(bivariateNormalCdf(free, k, rho) - normalCdf(k))).toBeLessThanOrEqual(ERROR);
  expect(bivariateNormalCdf(h, -free, rho)).toBe(0);
});

test.prop([pair, ordered(anyRho)])(
  "law: more correlation never makes a quadrant rarer",
  ([h, k], [r1, r2]) => {
    expect(bivariateNormalCdf(h, k, r1)).toBeLessThanOrEqual(bivariateNormalCdf(h, k, r2) + ERROR);
  },
);

test.prop([pair, anyRho])("law: a quadrant keeps the bounds of Fréchet and Hoeffding", ([h, k], rho) => {
  const share = bivariateNormalCdf(h, k, rho);
  expect(share).toBeGreaterThanOrEqual(Math.max(0, normalCdf(h) - normalCdf(-k)) - ERROR);
  expect(share).toBeLessThanOrEqual(Math.min(normalCdf(h), normalCdf(k)));
});

test.prop([ordered(nearZ), ordered(nearZ), nearZ, anyRho])(
  "law: a box is the sum of the boxes that it is cut into",
  ([l1, u1], [l2, u2], cut, rho) => {
    const at = Math.min(Math.max(cut, l1), u1);
    const parts = bivariateNormalBox(l1, at, l2, u2, rho) + bivariateNormalBox(at, u1, l2, u2, rho);
    expect(Math.abs(parts - bivariateNormalBox(l1, u1, l2, u2, rho))).toBeLessThanOrEqual(ERROR);
  },
);

test.prop([ordered(nearZ), ordered(nearZ), anyRho])(
  "law: a box is what the four quadrants at its corners leave",
  ([l1, u1], [l2, u2], rho) => {
    const corners =
      bivariateNormalCdf(u1, u2, rho) -
      bivariateNormalCdf(l1, u2, rho) -
      bivariateNormalCdf(u1, l2, rho) +
      bivariateNormalCdf(l1, l2, rho);
    expect(Math.abs(bivariateNormalBox(l1, u1, l2, u2, rho) - corners)).toBeLessThanOrEqual(2 * ERROR);
  },
);

test.prop([ordered(nearZ), ordered(nearZ)])(
  "law: at full correlation a box is an interval of the common line",
  ([l1, u1], [l2, u2]) => {
    const from = Math.max(l1, l2);
    const to = Math.min(u1, u2);
    const line = from < to ? normalIntervalProbability(from, to) : 0;
    expect(relativeGap(bivariateNormalBox(l1, u1, l2, u2, 1), line)).toBeLessThanOrEqual(1e-15);
    expect(relativeGap(bivariateNormalBox(l1, u1, -u2, -l2, -1), line)).toBeLessThanOrEqual(1e-15);
  },
);
