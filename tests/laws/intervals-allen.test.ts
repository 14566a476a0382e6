import { fc, test } from "@fast-check/vitest";
import {
  type AllenRelation,
  allenRelations,
  compose,
  contact,
  converse,
  type Interval,
  relation,
} from "@tapewise/intervals";
import { expect } from "vitest";
import { anyInterval, bounded, boundedProper, proper, shifted } from "./intervals-arbitraries.ts";

const anyRelation: fc.Arbitrary<AllenRelation> = fc.constantFrom(...allenRelations);

/** How the four bounds compare: all that a relation of two proper intervals may depend on. */
function comparisons(a: Interval, b: Interval): string {
  const compare = (x: number, y: number) => (x < y ? "<" : x > y ? ">" : "=");
  return [compare(a.from, b.from), compare(a.from, b.to), compare(a.to, b.from), compare(a.to, b.to)].join(
    "",
  );
}

/** The relation seen on a line that runs the other way: starts and finishes change places. */
function mirrored(set: Interval): Interval {
  return { from: -set.to, to: -set.from, fromClosed: set.toClosed, toClosed: set.fromClosed };
}

test.prop([anyInterval, anyInterval])(
  "law: the relation of b to a is the converse of that of a to b, points included",
  (a, b) => {
    expect(relation(b, a)).toBe(converse(relation(a, b)));
  },
);

test.prop([anyRelation])("law: the converse of the converse is the relation itself", (r) => {
  expect(converse(converse(r))).toBe(r);
});

test.prop([proper, proper, proper, proper])(
  "law: exactly one relation holds: two pairs share it exactly when their bounds compare alike",
  (a, b, c, d) => {
    expect(relation(a, b) === relation(c, d)).toBe(comparisons(a, b) === comparisons(c, d));
  },
);

test.prop([proper, proper, proper])("law: composition is sound: it allows what is the case", (a, b, c) => {
  expect(compose(relation(a, b), relation(b, c))).toContain(relation(a, c));
});

test.prop([anyRelation, anyRelation])(
  "law: the converse of a composition is the composition of the converses, backwards",
  (r, s) => {
    const there = compose(r, s).map(converse);
    expect(new Set(there)).toEqual(new Set(compose(converse(s), converse(r))));
  },
);

test.prop([anyRelation, anyRelation, anyRelation])("law: composition is associative", (r, s, t) => {
  const first = compose(r, s).flatMap((rs) => compose(rs, t));
  const second = compose(s, t).flatMap((st) => compose(r, st));
  expect(new Set(first)).toEqual(new Set(second));
});

test.prop([anyRelation])(
  "law: equals is the identity of composition, and r then its converse allows it",
  (r) => {
    expect(compose("equals", r)).toEqual([r]);
    expect(compose(r, "equals")).toEqual([r]);
    expect(compose(r, converse(r))).toContain("equals");
  },
);

test.prop([bounded, bounded, fc.integer({ min: -1000, max: 1000 })])(
  "law: a shift of both intervals leaves their relation and contact",
  (a, b, by) => {
    expect(relation(shifted(a, by), shifted(b, by))).toBe(relation(a, b));
    expect(contact(shifted(a, by), shifted(b, by))).toBe(contact(a, b));
  },
);

test.prop([proper, proper])("law: on a mirrored line starts and finishes change places", (a, b) => {
  const swap: Partial<Record<AllenRelation, AllenRelation>> = {
    before: "after",
    after: "before",
    meets: "met-by",
    "met-by": "meets",
    overlaps: "overlapped-by",
    "overlapped-by": "overlaps",
    starts: "finishes",
    finishes: "starts",
    "started-by": "finished-by",
    "finished-by": "started-by",
  };
  const seen = relation(a, b);
  expect(relation(mirrored(a), mirrored(b))).toBe(swap[seen] ?? seen);
});

test.prop([proper, proper])(
  "law: intervals that meet share an end, are adjacent, or leave out one point, and no others do",
  (a, b) => {
    const meeting = ["meets", "met-by"].includes(relation(a, b));
    expect(["shared-end", "adjacent", "split-by-point"].includes(contact(a, b))).toBe(meeting);
    expect(contact(a, b) === "apart").toBe(["before", "after"].includes(relation(a, b)));
  },
);

test.prop([boundedProper, boundedProper, boundedProper])("law: before is transitive", (a, b, c) => {
  const isBefore = (x: Interval, y: Interval) => relation(x, y) === "before";
  // Put in the order of their starts, so that chains are not rare.
  const [x, y, z] = [a, b, c].toSorted((p, q) => p.from - q.from) as [Interval, Interval, Interval];
  fc.pre(isBefore(x, y) && isBefore(y, z));
  expect(isBefore(x, z)).toBe(true);
});
