import { fc, test } from "@fast-check/vitest";
import {
  contact,
  contains,
  distanceTo,
  equals,
  gapBetween,
  hull,
  intersect,
  intervalLength,
  midpoint,
  overlapLength,
  point,
  shareCovered,
  touches,
  union,
  unionContains,
  unionLength,
} from "@tapewise/intervals";
import { expect } from "vitest";
import {
  anyInterval,
  anyUnion,
  bounded,
  boundedProper,
  members,
  shifted,
  witnesses,
} from "./intervals-arbitraries.ts";

const shift = fc.integer({ min: -1000, max: 1000 });
const witness = fc.constantFrom(...witnesses);

test.prop([anyInterval, anyInterval])(
  "law: a number is in the intersection exactly when it is in both",
  (a, b) => {
    const common = intersect(a, b);
    const both = witnesses.map((x) => contains(a, x) && contains(b, x));
    expect(common === undefined ? both.map(() => false) : members(common)).toEqual(both);
    expect(common === undefined).toBe(!both.includes(true));
  },
);

test.prop([anyInterval, anyInterval])(
  "law: intervals are equal exactly when they hold the same numbers",
  (a, b) => {
    expect(equals(a, b)).toBe(members(a).join() === members(b).join());
  },
);

test.prop([anyInterval, witness])("law: to contain a number is to intersect its point", (a, x) => {
  expect(contains(a, x)).toBe(intersect(a, point(x)) !== undefined);
});

test.prop([anyInterval, anyInterval, anyInterval])(
  "law: intersection is commutative, associative and idempotent",
  (a, b, c) => {
    const ab = intersect(a, b);
    const bc = intersect(b, c);
    expect(intersect(b, a)).toEqual(ab);
    expect(ab && intersect(ab, c)).toEqual(bc && intersect(a, bc));
    expect(intersect(a, a)).toEqual(a);
  },
);

test.prop([anyInterval, anyInterval])(
  "law: overlap is symmetric and never longer than the shorter of the two",
  (a, b) => {
    expect(overlapLength(a, b)).toBe(overlapLength(b, a));
    expect(overlapLength(a, b)).toBeLessThanOrEqual(Math.min(intervalLength(a), intervalLength(b)));
  },
);

test.prop([anyInterval, anyInterval])("law: the hull holds both, and no smaller interval does", (a, b) => {
  const whole = hull(a, b);
  expect(intersect(whole, a)).toEqual(a);
  expect(intersect(whole, b)).toEqual(b);
  // What it holds beyond both is only the hole between them.
  const hole = gapBetween(a, b);
  const held = witnesses.map(
    (x) => contains(a, x) || contains(b, x) || (hole !== undefined && contains(hole, x)),
  );
  expect(members(whole)).toEqual(held);
});

test.prop([anyInterval, anyInterval])(
  "law: there is a gap exactly when two intervals neither share a number nor touch",
  (a, b) => {
    const apart = intersect(a, b) === undefined && !touches(a, b);
    expect(gapBetween(a, b) !== undefined).toBe(apart);
    expect(gapBetween(b, a)).toEqual(gapBetween(a, b));
  },
);

test.prop([anyInterval, anyInterval])(
  "law: a gap touches both of its neighbours without a common number",
  (a, b) => {
    const gap = gapBetween(a, b);
    fc.pre(gap !== undefined);
    expect([contact(a, gap), contact(gap, b)]).toEqual(["adjacent", "adjacent"]);
    expect(union(a, gap, b)).toEqual([hull(a, b)]);
  },
);

test.prop([anyInterval, anyInterval])("law: contact says what common numbers and holes say", (a, b) => {
  const common = intersect(a, b);
  const hole = gapBetween(a, b);
  const found = contact(a, b);
  expect(contact(b, a)).toBe(found);
  expect(hole !== undefined).toBe(found === "apart" || found === "split-by-point");
  if (hole !== undefined) expect(intervalLength(hole) === 0).toBe(found === "split-by-point");
  expect(common !== undefined).toBe(found === "shared-end" || found === "overlapping");
  if (found === "shared-end" && common !== undefined) expect(intervalLength(common)).toBe(0);
});

test.prop([anyInterval, anyInterval])(
  "law: lengths are additive: |a| + |b| = |a or b| + |a and b|",
  (a, b) => {
    const sum = intervalLength(a) + intervalLength(b);
    expect(unionLength(union(a, b)) + overlapLength(a, b)).toBe(sum);
  },
);

test.prop([bounded, bounded])("law: hull = lengths - overlap + gap", (a, b) => {
  const gap = gapBetween(a, b);
  const gapLength = gap === undefined ? 0 : intervalLength(gap);
  const parts = intervalLength(a) + intervalLength(b) - overlapLength(a, b) + gapLength;
  expect(intervalLength(hull(a, b))).toBe(parts);
});

test.prop([bounded, bounded, shift])("law: a shift moves results along and leaves lengths", (a, b, by) => {
  const [a2, b2] = [shifted(a, by), shifted(b, by)];
  const common = intersect(a, b);
  const gap = gapBetween(a, b);
  expect(intersect(a2, b2)).toEqual(common && shifted(common, by));
  expect(gapBetween(a2, b2)).toEqual(gap && shifted(gap, by));
  expect(hull(a2, b2)).toEqual(shifted(hull(a, b), by));
  expect(intervalLength(a2)).toBe(intervalLength(a));
  expect(shareCovered(a2, b2)).toBe(shareCovered(a, b));
});

test.prop([anyInterval, witness])(
  "law: the distance is 0 inside, and the length of the gap to the point outside",
  (a, x) => {
    const gap = gapBetween(a, point(x));
    expect(distanceTo(a, x)).toBe(gap === undefined ? 0 : intervalLength(gap));
  },
);

test.prop([boundedProper])("law: the midpoint is inside and halves the length", (a) => {
  const middle = midpoint(a);
  if (middle === undefined) throw new Error("an interval with two bounds has a middle");
  expect(contains(a, middle)).toBe(true);
  expect(middle - a.from).toBe(a.to - middle);
});

test.prop([anyInterval, anyUnion])(
  "law: a covered share is from 0 to 1, and 1 for whatever holds the interval",
  (a, by) => {
    const share = shareCovered(a, by);
    expect(share).toBeGreaterThanOrEqual(0);
    expect(share).toBeLessThanOrEqual(1);
    expect(shareCovered(a, union(a, ...by))).toBe(1);
  },
);

test.prop([anyInterval, anyUnion, anyInterval])(
  "law: more cover never lowers the covered share",
  (a, by, more) => {
    expect(shareCovered(a, union(...by, more))).toBeGreaterThanOrEqual(shareCovered(a, by));
  },
);

test.prop([boundedProper, anyInterval])("law: covered share times length is the overlap", (a, by) => {
  expect(shareCovered(a, by) * intervalLength(a)).toBeCloseTo(overlapLength(a, by), 12);
});

test.prop([anyInterval, witness])("law: one interval is a union of one part", (a, x) => {
  expect(unionContains(union(a), x)).toBe(contains(a, x));
  expect(union(a)).toEqual([a]);
});
