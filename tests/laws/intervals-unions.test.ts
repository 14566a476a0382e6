import { fc, test } from "@fast-check/vitest";
import {
  complement,
  everything,
  formatInterval,
  gapBetween,
  gaps,
  type IntervalUnion,
  intersectUnions,
  subtract,
  union,
  unionLength,
} from "@tapewise/intervals";
import { expect } from "vitest";
import { anyInterval, anyUnion, members, shifted, unionMembers, witnesses } from "./intervals-arbitraries.ts";

const none = union();
const all = union(everything);
const joined = (a: IntervalUnion, b: IntervalUnion): IntervalUnion => union(...a, ...b);

/** Sorted, and a hole between each part and the next. */
function expectNormalised(parts: IntervalUnion): void {
  for (const [index, next] of parts.entries()) {
    const previous = parts[index - 1];
    if (previous === undefined) continue;
    expect(previous.to).toBeLessThanOrEqual(next.from);
    expect(gapBetween(previous, next)).toBeDefined();
  }
}

test.prop([fc.array(anyInterval, { maxLength: 6 })])(
  "law: a union holds a number exactly when one of its intervals does",
  (intervals) => {
    const held = witnesses.map((_, i) => intervals.some((part) => members(part)[i]));
    expect(unionMembers(union(...intervals))).toEqual(held);
  },
);

test.prop([anyUnion, anyUnion])("law: every result is in order, with holes between its parts", (a, b) => {
  for (const result of [a, joined(a, b), intersectUnions(a, b), complement(a), subtract(a, b), gaps(a)]) {
    expectNormalised(result);
  }
});

test.prop([anyUnion, anyUnion])("law: unions that hold the same numbers are written the same", (a, b) => {
  const written = (parts: IntervalUnion) => parts.map((part) => formatInterval(part)).join();
  expect(written(a) === written(b)).toBe(unionMembers(a).join() === unionMembers(b).join());
});

test.prop([anyUnion, anyUnion, anyUnion])(
  "law: union is commutative, associative and idempotent",
  (a, b, c) => {
    expect(joined(a, b)).toEqual(joined(b, a));
    expect(joined(joined(a, b), c)).toEqual(joined(a, joined(b, c)));
    expect(joined(a, a)).toEqual(a);
  },
);

test.prop([anyUnion, anyUnion, anyUnion])(
  "law: intersection of unions is commutative, associative and idempotent",
  (a, b, c) => {
    expect(intersectUnions(a, b)).toEqual(intersectUnions(b, a));
    expect(intersectUnions(intersectUnions(a, b), c)).toEqual(intersectUnions(a, intersectUnions(b, c)));
    expect(intersectUnions(a, a)).toEqual(a);
  },
);

test.prop([anyUnion, anyUnion, anyUnion])(
  "law: union and intersection distribute over each other",
  (a, b, c) => {
    expect(intersectUnions(a, joined(b, c))).toEqual(joined(intersectUnions(a, b), intersectUnions(a, c)));
    expect(joined(a, intersectUnions(b, c))).toEqual(intersectUnions(joined(a, b), joined(a, c)));
  },
);

test.prop([anyUnion])("law: nothing and everything are the neutral elements", (a) => {
  expect(joined(a, none)).toEqual(a);
  expect(joined(a, all)).toEqual(all);
  expect(intersectUnions(a, all)).toEqual(a);
  expect(intersectUnions(a, none)).toEqual(none);
});

test.prop([anyUnion])("law: the complement of the complement is the union itself", (a) => {
  expect(complement(complement(a))).toEqual(a);
});

test.prop([anyUnion])("law: a union and its complement share nothing and leave nothing", (a) => {
  expect(unionMembers(complement(a))).toEqual(unionMembers(a).map((held) => !held));
  expect(intersectUnions(a, complement(a))).toEqual(none);
  expect(joined(a, complement(a))).toEqual(all);
});

test.prop([anyUnion, anyUnion])("law: De Morgan", (a, b) => {
  expect(complement(joined(a, b))).toEqual(intersectUnions(complement(a), complement(b)));
  expect(complement(intersectUnions(a, b))).toEqual(joined(complement(a), complement(b)));
});

test.prop([anyUnion, anyUnion])("law: what is taken away and what is left make up the whole", (a, b) => {
  expect(intersectUnions(subtract(a, b), b)).toEqual(none);
  expect(joined(subtract(a, b), intersectUnions(a, b))).toEqual(a);
});

test.prop([anyUnion, anyUnion])("law: lengths of unions are additive", (a, b) => {
  const together = unionLength(joined(a, b)) + unionLength(intersectUnions(a, b));
  expect(together).toBe(unionLength(a) + unionLength(b));
});

test.prop([anyUnion])("law: the gaps fill a union up to one part, and there is one fewer than parts", (a) => {
  fc.pre(a.length > 0);
  expect(gaps(a)).toHaveLength(a.length - 1);
  expect(joined(a, gaps(a))).toHaveLength(1);
  expect(intersectUnions(a, gaps(a))).toEqual(none);
});

test.prop([anyUnion, anyUnion, fc.integer({ min: -1000, max: 1000 })])(
  "law: a shift of all parts moves every result along",
  (a, b, by) => {
    const moved = (parts: IntervalUnion) => union(...parts.map((part) => shifted(part, by)));
    expect(intersectUnions(moved(a), moved(b))).toEqual(moved(intersectUnions(a, b)));
    expect(complement(moved(a))).toEqual(moved(complement(a)));
    expect(gaps(moved(a))).toEqual(moved(gaps(a)));
  },
);
