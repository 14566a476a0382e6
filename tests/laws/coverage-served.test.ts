import { fc, test } from "@fast-check/vitest";
import { parseChart, type SizeChart } from "@tapewise/charts";
import { type Coverage, chartCoverage, choiceErrors } from "@tapewise/coverage";
import { unwrap } from "@tapewise/outcome";
import { type JointModel, mixtureJoint } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { expect } from "vitest";
import {
  countedArbitrary,
  drawnChart,
  normalArbitrary,
  sizesArbitrary,
  torsoSizesArbitrary,
} from "./coverage-arbitraries.ts";

const people: fc.Arbitrary<JointModel> = fc.oneof(normalArbitrary, countedArbitrary);
const cover = (chart: SizeChart | readonly SizeChart[], population: JointModel): Coverage =>
  unwrap(chartCoverage(chart, population));
const ROUNDING = 1e-9;
const runs = { numRuns: 60 };

test.prop([sizesArbitrary, people], runs)(
  "law: served by one, by several and by none are everybody",
  (sizes, population) => {
    const { served, byOne, bySeveral, byNone, sizes: each } = cover(drawnChart(sizes), population);
    expect(byOne.share + bySeveral.share + byNone.share).toBeCloseTo(1, 10);
    expect(byOne.share + bySeveral.share).toBeCloseTo(served.share, 10);
    expect(each.reduce((sum, { only }) => sum + only.share, 0)).toBeCloseTo(byOne.share, 10);
    for (const share of each.map((size) => size.served.share)) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(served.share + ROUNDING);
    }
  },
);

test.prop([torsoSizesArbitrary, people], runs)(
  "law: in one dimension whoever is not served is below, in a gap or above",
  (sizes, population) => {
    const { byNone, outside } = cover(drawnChart(sizes), population);
    const [only] = outside;
    const gaps = only?.gaps.reduce((sum, gap) => sum + gap.people.share, 0) ?? 0;
    expect((only?.below.share ?? 0) + gaps + (only?.above.share ?? 0)).toBeCloseTo(byNone.share, 10);
  },
);

test.prop([sizesArbitrary, sizesArbitrary, people], runs)(
  "law: adding sizes never lowers the share served",
  (sizes, more, population) => {
    const few = cover(drawnChart(sizes), population).served.share;
    expect(cover(drawnChart([...sizes, ...more]), population).served.share).toBeGreaterThanOrEqual(
      few - ROUNDING,
    );
  },
);

test.prop([sizesArbitrary, people, fc.nat({ max: 30 }), fc.nat({ max: 30 })], runs)(
  "law: widening sizes never lowers the share that one or all of them serve",
  (sizes, population, down, up) => {
    const wider = sizes.map(({ torso: [from, to], ...rest }) => ({
      ...rest,
      torso: [from - down, to + up] as const,
    }));
    const [narrow, wide] = [cover(drawnChart(sizes), population), cover(drawnChart(wider), population)];
    expect(wide.served.share).toBeGreaterThanOrEqual(narrow.served.share - ROUNDING);
    for (const [k, size] of narrow.sizes.entries()) {
      expect(wide.sizes[k]?.served.share).toBeGreaterThanOrEqual(size.served.share - ROUNDING);
    }
  },
);

test.prop([sizesArbitrary, people], runs)("law: the order of sizes plays no part", (sizes, population) => {
  const chart = drawnChart(sizes);
  const reversed = { ...chart, sizes: chart.sizes.toReversed() };
  const [one, other] = [cover(chart, population), cover(reversed, population)];
  expect(other.served.share).toBeCloseTo(one.served.share, 12);
  expect(other.bySeveral.share).toBeCloseTo(one.bySeveral.share, 12);
  for (const size of one.sizes) {
    const same = other.sizes.find(({ size: name }) => name === size.size);
    expect(same?.served.share).toBeCloseTo(size.served.share, 12);
  }
});

test.prop([sizesArbitrary, sizesArbitrary, people], runs)(
  "law: a shelf serves at least as many as each of its charts, and at most all of them together",
  (sizes, others, population) => {
    const [a, b] = [drawnChart(sizes), drawnChart(others, "Teaspoon 35")];
    const [pa, pb] = [cover(a, population).served.share, cover(b, population).served.share];
    const shelf = cover([a, b], population).served.share;
    expect(shelf).toBeGreaterThanOrEqual(Math.max(pa, pb) - ROUNDING);
    expect(shelf).toBeLessThanOrEqual(Math.min(1, pa + pb) + ROUNDING);
    expect(cover([b, a], population).served.share).toBeCloseTo(shelf, 10);
  },
);

test.prop([sizesArbitrary, normalArbitrary, normalArbitrary, fc.integer({ min: 1, max: 9 })], runs)(
  "law: a mixture is served as its parts are, weighted",
  (sizes, one, other, tenths) => {
    const parts = [
      { weight: tenths, model: one },
      { weight: 10 - tenths, model: other },
    ];
    const all = cover(drawnChart(sizes), mixtureJoint({ about: one.about, parts }));
    const apart = parts.map(({ model }) => cover(drawnChart(sizes), model).served.share);
    expect(all.served.share).toBeCloseTo(
      (tenths * (apart[0] ?? 0) + (10 - tenths) * (apart[1] ?? 0)) / 10,
      10,
    );
    expect(all.parts.map(({ coverage }) => coverage.served.share)).toEqual(apart);
  },
);

const inches = fc.tuple(fc.integer({ min: 52, max: 84 }), fc.integer({ min: 1, max: 12 }));

test.prop([fc.array(inches, { minLength: 1, maxLength: 4 }), people], runs)(
  "law: the unit of a chart plays no part",
  (quarters, population) => {
    const chartIn = (unit: "in" | "mm" | "cm", perQuarter: number) =>
      parseChart(
        [
          `size,torso-length (${unit})`,
          ...quarters.map(
            ([from, width], k) => `S${k},${from * perQuarter}-${((from + width) * perQuarter).toFixed(4)}`,
          ),
        ].join("\n"),
        { chart: "Doily 45" },
      );
    // A quarter of an inch is 6.35 mm exactly.
    const [one, ...others] = [chartIn("in", 0.25), chartIn("mm", 6.35), chartIn("cm", 0.635)].map((chart) =>
      cover(chart, population),
    );
    for (const other of others) {
      expect(other.served.share).toBeCloseTo(one?.served.share ?? 0, 9);
      expect(other.bySeveral.share).toBeCloseTo(one?.bySeveral.share ?? 0, 9);
    }
  },
);

test.prop([sizesArbitrary, normalArbitrary], { numRuns: 15 })(
  "law: people drawn at random are served as stated, within the error of drawing",
  (sizes, population) => {
    const { served, bySeveral } = cover(drawnChart(sizes), population);
    const random = createRandom(17);
    const drawn = Array.from({ length: 2000 }, () => population.sample(random));
    const fits = drawn.map(
      ([torso = 0, hip = 0]) =>
        sizes.filter(
          (size) =>
            torso >= size.torso[0] &&
            torso <= size.torso[1] &&
            (size.hip === undefined || (hip >= size.hip[0] && hip <= size.hip[1])),
        ).length,
    );
    for (const [share, least] of [
      [served.share, 1],
      [bySeveral.share, 2],
    ] as const) {
      const counted = fits.filter((count) => count >= least).length / drawn.length;
      const room = 5 * Math.sqrt((share * (1 - share)) / drawn.length) + 5 / drawn.length;
      expect(Math.abs(counted - share)).toBeLessThan(room);
    }
  },
);

test.prop([sizesArbitrary, countedArbitrary], runs)(
  "law: people who are counted are served as looking at each of them says",
  (sizes, population) => {
    const fits = ([torso = 0, hip = 0]: readonly number[]) =>
      sizes.filter(
        (size) =>
          torso >= size.torso[0] &&
          torso <= size.torso[1] &&
          (size.hip === undefined || (hip >= size.hip[0] && hip <= size.hip[1])),
      ).length;
    const counts = population.people.map(fits);
    const { byOne, bySeveral, byNone } = cover(drawnChart(sizes), population);
    const share = (of: (count: number) => boolean) => counts.filter(of).length / counts.length;
    expect(byOne.share).toBeCloseTo(
      share((count) => count === 1),
      10,
    );
    expect(bySeveral.share).toBeCloseTo(
      share((count) => count > 1),
      10,
    );
    expect(byNone.share).toBeCloseTo(
      share((count) => count === 0),
      10,
    );
  },
);

test.prop([torsoSizesArbitrary, normalArbitrary, fc.constantFrom("self", "helper")], { numRuns: 15 })(
  "law: given right, given wrong and fitted by none are everybody, and measuring changes nobody's body",
  (sizes, population, measuredBy) => {
    const chart = drawnChart(sizes);
    const measuring = { conditions: { measuredBy }, readings: 3, stepMm: 5 } as const;
    const errors = unwrap(choiceErrors(chart, population, measuring));
    expect(errors.right + errors.wrong + errors.unserved).toBeCloseTo(1, 10);
    expect(errors.unserved).toBeCloseTo(cover(chart, population).byNone.share, 8);
    expect(errors.sizes.reduce((sum, { given }) => sum + given, 0)).toBeCloseTo(1, 8);
    expect(errors.sizes.reduce((sum, { misfitted }) => sum + misfitted, 0)).toBeCloseTo(
      errors.wrong + errors.unserved,
      8,
    );
  },
);
