import { fc, test } from "@fast-check/vitest";
import {
  averagingTable,
  chanceOfRightSize,
  compareNextWays,
  planReadings,
  planReadingsForChoice,
  readingsFor,
  type SizeBounds,
  subjectsForIccTest,
  subjectsForIccWidth,
  subjectsForTem,
  temBounds,
} from "@tapewise/measurement";
import { createRandom, normalCdf } from "@tapewise/statistics";
import { expect, test as plain } from "vitest";
import { conditionsArbitrary, dimensionArbitrary } from "./measurement-arbitraries.ts";

const errorArbitrary = fc.record({
  perReadingMm: fc.double({ min: 0, max: 20, noNaN: true }),
  lastingMm: fc.double({ min: 0, max: 10, noNaN: true }),
});
const targetArbitrary = fc.double({ min: 0.5, max: 30, noNaN: true });

test.prop([errorArbitrary])("law: more readings are never worse, and the floor is never crossed", (error) => {
  const rows = averagingTable(error, [1, 2, 3, 5, 10, 100, 10_000]);
  rows.forEach((row, i) => {
    expect(row.uncertaintyMm).toBeGreaterThanOrEqual(error.lastingMm);
    expect(row.uncertaintyMm).toBeLessThanOrEqual(rows[i - 1]?.uncertaintyMm ?? Number.POSITIVE_INFINITY);
    expect(row.lastingShare).toBeGreaterThanOrEqual(0);
    expect(row.lastingShare).toBeLessThanOrEqual(1);
    expect(Math.hypot(row.averagedMm, row.lastingMm)).toBeCloseTo(row.uncertaintyMm, 12);
  });
});

test.prop([errorArbitrary, targetArbitrary])(
  "law: for a standard uncertainty the plan is the one of readingsFor",
  (error, standardMm) => {
    const plan = planReadings(error, { standardMm }, Number.MAX_SAFE_INTEGER);
    expect(plan.isReachable ? plan.count : undefined).toBe(readingsFor(error, standardMm));
    if (!plan.isReachable) expect(plan.floorMm).toBe(error.lastingMm);
  },
);

test.prop([
  errorArbitrary,
  targetArbitrary,
  fc.double({ min: 0.5, max: 0.999, noNaN: true }),
  fc.double({ min: 1, max: 100, noNaN: true }),
])("law: the plan is enough, and one reading fewer is not", (error, expandedMm, probability, df) => {
  const known = { ...error, perReadingDegreesOfFreedom: df };
  const target = { expandedMm, probability };
  const plan = planReadings(known, target);
  if (!plan.isReachable) {
    const last = planReadings(known, target, 1000);
    expect(last.isReachable).toBe(false);
    if (plan.reason === "lasting") expect(plan.floorMm).toBeGreaterThanOrEqual(expandedMm * (1 - 1e-9));
    return;
  }
  expect(plan.reachedMm).toBeLessThanOrEqual(expandedMm * (1 + 1e-9));
  expect(plan.uncertaintyMm).toBeGreaterThanOrEqual(error.lastingMm);
  if (plan.count > 1) expect(planReadings(known, target, plan.count - 1).isReachable).toBe(false);
});

test.prop([errorArbitrary, targetArbitrary, fc.double({ min: 1.01, max: 3, noNaN: true })])(
  "law: a lower target never takes fewer readings",
  (error, expandedMm, factor) => {
    const countOf = (mm: number) => {
      const plan = planReadings(error, { expandedMm: mm, probability: 0.95 });
      return plan.isReachable ? plan.count : Number.POSITIVE_INFINITY;
    };
    expect(countOf(expandedMm / factor)).toBeGreaterThanOrEqual(countOf(expandedMm));
  },
);

/** Sizes that touch, overlap, leave gaps or lie within each other, some with open ends, in any order. */
const sizesArbitrary: fc.Arbitrary<readonly SizeBounds[]> = fc.array(
  fc
    .record({
      from: fc.integer({ min: 360, max: 560 }),
      width: fc.integer({ min: 1, max: 120 }),
      open: fc.constantFrom("neither", "neither", "neither", "below", "above"),
    })
    .map(({ from, width, open }) => ({
      from: open === "below" ? Number.NEGATIVE_INFINITY : from,
      to: open === "above" ? Number.POSITIVE_INFINITY : from + width,
    })),
  { minLength: 1, maxLength: 6 },
);
const beliefArbitrary = fc.record({
  meanMm: fc.double({ min: 380, max: 560, noNaN: true }),
  sdMm: fc.double({ min: 3, max: 40, noNaN: true }),
});

test.prop([
  sizesArbitrary,
  beliefArbitrary,
  fc.double({ min: 0, max: 30, noNaN: true }),
  fc.double({ min: 0, max: 30, noNaN: true }),
])("law: the chance of the right size falls as the uncertainty grows", (sizes, belief, one, other) => {
  const [low, high] = one < other ? [one, other] : [other, one];
  const better = chanceOfRightSize(sizes, belief, low);
  const worse = chanceOfRightSize(sizes, belief, high);
  // Each box is good to 3e-16.
  expect(worse).toBeLessThanOrEqual(better + 1e-14);
  expect(worse).toBeGreaterThanOrEqual(0);
  expect(better).toBeLessThanOrEqual(1);
});

test.prop([sizesArbitrary, beliefArbitrary])(
  "law: without error the chance is that of a length with a size",
  (sizes, belief) => {
    const share = (to: number) => normalCdf((to - belief.meanMm) / belief.sdMm);
    let covered = 0;
    let reached = Number.NEGATIVE_INFINITY;
    for (const { from, to } of sizes.toSorted((a, b) => (a.from < b.from ? -1 : 1))) {
      covered += share(Math.max(to, reached)) - share(Math.max(from, reached));
      reached = Math.max(reached, to);
    }
    expect(chanceOfRightSize(sizes, belief, 0)).toBeCloseTo(covered, 12);
  },
);

test.prop(
  [errorArbitrary, sizesArbitrary, beliefArbitrary, fc.double({ min: 0.3, max: 0.99, noNaN: true })],
  {
    numRuns: 50,
  },
)(
  "law: a plan for a choice is enough, one reading fewer is not, and no plan passes its bounds",
  (error, sizes, belief, wantedChance) => {
    const plan = planReadingsForChoice({ error, sizes, belief, wantedChance, mostReadings: 40 });
    expect(plan.chanceOfOne).toBeLessThanOrEqual(plan.chanceAtBest + 1e-14);
    expect(plan.chanceAtBest).toBeLessThanOrEqual(plan.possibleChance + 1e-14);
    expect(plan.chance).toBeLessThanOrEqual(plan.chanceAtBest + 1e-14);
    const at = (count: number) =>
      chanceOfRightSize(sizes, belief, Math.hypot(error.lastingMm, error.perReadingMm / Math.sqrt(count)));
    if (plan.count === undefined) {
      expect(at(40)).toBeLessThan(wantedChance);
      return;
    }
    expect(plan.chance).toBeGreaterThanOrEqual(wantedChance);
    if (plan.count > 1) expect(at(plan.count - 1)).toBeLessThan(wantedChance);
  },
);

plain("law: the chance of the right size is the share that a simulation gets right", () => {
  const sizes = [
    { from: 380, to: 435 },
    { from: 425, to: 480 },
    { from: 490, to: 530 },
  ];
  const random = createRandom(5);
  const people = 40_000;
  let right = 0;
  for (let i = 0; i < people; i += 1) {
    const length = 455 + 25 * random.normal();
    const measured = length + 9 * random.normal();
    const picked = sizes[measured < 430 ? 0 : measured < 485 ? 1 : 2];
    if (picked !== undefined && picked.from <= length && length <= picked.to) right += 1;
  }
  const chance = chanceOfRightSize(sizes, { meanMm: 455, sdMm: 25 }, 9);
  expect(Math.abs(right / people - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / people));
});

test.prop([
  dimensionArbitrary,
  fc.double({ min: 300, max: 1200, noNaN: true }),
  fc.integer({ min: 1, max: 8 }),
  fc.integer({ min: 1, max: 8 }),
  fc.constantFrom(0, 1, 5, 25.4),
  conditionsArbitrary,
])(
  "law: no way to measure on makes it worse, and none gets below its floor",
  (dimension, lengthMm, count, further, stepMm, conditions) => {
    const { nowMm, ways } = compareNextWays({ dimension, lengthMm, count, stepMm, conditions }, further);
    expect(ways.some(({ way }) => way === "repeat")).toBe(true);
    ways.forEach((row, i) => {
      expect(row.uncertaintyMm).toBeLessThanOrEqual(nowMm * (1 + 1e-9));
      expect(row.floorMm).toBeLessThanOrEqual(row.uncertaintyMm * (1 + 1e-9));
      expect(row.uncertaintyMm).toBeGreaterThanOrEqual(ways[i - 1]?.uncertaintyMm ?? 0);
      expect(row.gainMm).toBeCloseTo(nowMm - row.uncertaintyMm, 9);
    });
  },
);

const shareArbitrary = fc.double({ min: 0.05, max: 0.95, noNaN: true });

test.prop([shareArbitrary, fc.integer({ min: 2, max: 10 }), fc.double({ min: 0.02, max: 0.4, noNaN: true })])(
  "law: a narrower interval of the ICC takes more subjects",
  (icc, repeats, width) => {
    const subjects = subjectsForIccWidth({ icc, repeats, width });
    expect(subjectsForIccWidth({ icc, repeats, width: width / 2 })).toBeGreaterThanOrEqual(subjects);
  },
);

test.prop([shareArbitrary, shareArbitrary, fc.integer({ min: 2, max: 10 })])(
  "law: more readings of each subject never take more subjects",
  (one, other, repeats) => {
    fc.pre(Math.abs(one - other) > 0.01);
    const plan = { least: Math.min(one, other), expected: Math.max(one, other) };
    expect(subjectsForIccTest({ ...plan, repeats: repeats + 1 })).toBeLessThanOrEqual(
      subjectsForIccTest({ ...plan, repeats }),
    );
  },
);

test.prop([fc.integer({ min: 2, max: 8 }), fc.double({ min: 0.05, max: 2, noNaN: true }), shareArbitrary])(
  "law: the subjects for a TEM are enough, and one fewer is not",
  (repeats, precision, probability) => {
    const subjects = subjectsForTem({ repeats, precision, probability });
    expect(temBounds(subjects, repeats, probability).upper - 1).toBeLessThanOrEqual(precision);
    if (subjects > 1)
      expect(temBounds(subjects - 1, repeats, probability).upper - 1).toBeGreaterThan(precision);
  },
);

plain("law: the bounds of a TEM hold the true one in 95 of 100 studies", () => {
  const random = createRandom(6);
  const studies = 4000;
  const { lower, upper } = temBounds(8, 2, 0.95);
  let held = 0;
  for (let i = 0; i < studies; i += 1) {
    let squares = 0;
    for (let k = 0; k < 8; k += 1) squares += (3 * random.normal() - 3 * random.normal()) ** 2;
    const tem = Math.sqrt(squares / 16);
    if (lower * tem <= 3 && 3 <= upper * tem) held += 1;
  }
  expect(Math.abs(held / studies - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / studies));
});
