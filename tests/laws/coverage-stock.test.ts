import { fc, test } from "@fast-check/vitest";
import { chartCoverage, type StockRequest, stockFor, stockShares, tryStock } from "@tapewise/coverage";
import { unwrap } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import { expect } from "vitest";
import {
  countedArbitrary,
  type DrawnSize,
  drawnChart,
  normalArbitrary,
  sizesArbitrary,
} from "./coverage-arbitraries.ts";

const people: fc.Arbitrary<JointModel> = fc.oneof(normalArbitrary, countedArbitrary);
const runs = { numRuns: 40 };
const members = fc.integer({ min: 1, max: 25 });
const chance = fc.integer({ min: 1, max: 199 }).map((part) => part / 200);
const counts = (sizes: readonly DrawnSize[], population: JointModel, request: StockRequest) =>
  unwrap(stockFor(drawnChart(sizes), population, request)).sizes.map(({ count }) => count);

test.prop([sizesArbitrary, people], runs)(
  "law: the parts of an order add up to all of it, and people to those served",
  (sizes, population) => {
    const chart = drawnChart(sizes);
    const shares = unwrap(stockShares(chart, population));
    const served = unwrap(chartCoverage(chart, population)).served.share;
    const ofOrder = shares.sizes.reduce((sum, size) => sum + size.ofOrder, 0);
    expect(ofOrder).toBeCloseTo(served > 0 ? 1 : 0, 9);
    expect(shares.sizes.reduce((sum, size) => sum + size.ofPeople, 0)).toBeCloseTo(served, 9);
    expect(shares.unserved).toBeCloseTo(1 - served, 9);
  },
);

test.prop([sizesArbitrary, people], runs)(
  "law: the order of sizes plays no part in an order, nor in a stock",
  (sizes, population) => {
    const chart = drawnChart(sizes);
    const reversed = { ...chart, sizes: chart.sizes.toReversed() };
    const [one, other] = [unwrap(stockShares(chart, population)), unwrap(stockShares(reversed, population))];
    for (const size of one.sizes) {
      const same = other.sizes.find(({ size: name }) => name === size.size);
      expect(same?.ofPeople).toBeCloseTo(size.ofPeople, 10);
    }
    const request = { members: 9, chance: 0.9 };
    const [a, b] = [
      unwrap(stockFor(chart, population, request)),
      unwrap(stockFor(reversed, population, request)),
    ];
    expect(b.total).toBe(a.total);
  },
);

test.prop([sizesArbitrary, people, members, chance], runs)(
  "law: a stock is enough with the chance that was asked, by either rule",
  (sizes, population, count, asked) => {
    for (const rule of ["flexible", "each-size"] as const) {
      const stock = unwrap(stockFor(drawnChart(sizes), population, { members: count, chance: asked, rule }));
      expect(stock.chance).toBeGreaterThanOrEqual(asked - 1e-9);
    }
  },
);

test.prop([sizesArbitrary, people, members, members, chance, chance], runs)(
  "law: size by size, more members or a higher chance never lower a stock",
  (sizes, population, a, b, p, q) => {
    const few = counts(sizes, population, {
      members: Math.min(a, b),
      chance: Math.min(p, q),
      rule: "each-size",
    });
    const many = counts(sizes, population, {
      members: Math.max(a, b),
      chance: Math.max(p, q),
      rule: "each-size",
    });
    for (const [k, count] of few.entries()) expect(many[k]).toBeGreaterThanOrEqual(count);
  },
);

test.prop([sizesArbitrary, people, members, chance, chance], runs)(
  "law: by the flexible rule a higher chance never lowers the stock of any size",
  (sizes, population, count, p, q) => {
    const low = counts(sizes, population, { members: count, chance: Math.min(p, q) });
    const high = counts(sizes, population, { members: count, chance: Math.max(p, q) });
    for (const [k, each] of low.entries()) expect(high[k]).toBeGreaterThanOrEqual(each);
  },
);

test.prop([sizesArbitrary, normalArbitrary, fc.integer({ min: 2, max: 15 })], { numRuns: 25 })(
  "law: crews drawn at random find a stock enough as often as it says, or more often",
  (sizes, population, count) => {
    const chart = drawnChart(sizes);
    const stock = unwrap(stockFor(chart, population, { members: count, chance: 0.8 }));
    const trials = 400;
    const tried = unwrap(
      tryStock(chart, population, { members: count, counts: stock.sizes.map((size) => size.count), trials }),
    );
    // Five standard errors: one of two million tries fails by chance.
    const room = 5 * Math.sqrt((stock.chance * (1 - stock.chance)) / trials) + 5 / trials;
    expect(tried.enough).toBeGreaterThan(stock.chance - room);
    if (stock.assignment === "any-that-fits") expect(tried.enough).toBeLessThan(stock.chance + room);
  },
);
