import {
  complement,
  contact,
  contains,
  distanceTo,
  equals,
  gaps,
  hull,
  type Interval,
  intersect,
  intersectUnions,
  interval,
  intervalLength,
  midpoint,
  overlapLength,
  point,
  safeInterval,
  shareCovered,
  subtract,
  touches,
  union,
  unionContains,
  unionLength,
} from "@tapewise/intervals";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import further from "./further-values.json" with { type: "json" };
import { type Against, against } from "./table/against.ts";

// Sets of places on a line, whole numbers and what lies between them, counted in Python: no rule about bounds is in it.
const { sets } = further;
type Ends = readonly (number | boolean | null)[];

function of([from, to, fromClosed, toClosed]: Ends): Interval {
  return interval(
    from === null ? Number.NEGATIVE_INFINITY : Number(from),
    to === null ? Number.POSITIVE_INFINITY : Number(to),
    { fromClosed: fromClosed === true, toClosed: toClosed === true },
  );
}

const counted = (name: string): Against =>
  against({
    of: `intervals.${name}`,
    source: "sets of places on a line, open and closed ends",
    origin: "recomputed in Python by counting places",
    why: "whole numbers",
  });

test("there are sets of every kind", () => {
  expect(sets.length).toBeGreaterThanOrEqual(60);
  expect(sets.some(({ gaps: list }) => list.length > 0)).toBe(true);
  expect(sets.some(({ intersect: list }) => list.length === 0)).toBe(true);
  expect(sets.some(({ subtract: list }) => list.length === 2)).toBe(true);
});

test.each(sets)("$a and $b; $many and $others; at $x", (one) => {
  const [a, b] = [of(one.a), of(one.b)];
  const [many, others] = [union(...one.many.map(of)), union(...one.others.map(of))];
  const { x } = one;
  counted("union").same(many, one.union.map(of), one.union.length);
  counted("unionLength").same(unionLength(many), one.unionLength);
  counted("complement").same(complement(many), one.complement.map(of), one.complement.length);
  counted("contains").same(contains(a, x), one.contains);
  counted("unionContains").same(unionContains(many, x), one.unionContains);
  counted("distanceTo").same(distanceTo(a, x), one.distance);
  counted("equals").same(equals(a, b), one.equals);
  counted("hull").same([hull(a, b)], one.hull.map(of));
  const both = intersect(a, b);
  counted("intersect").same(both === undefined ? [] : [both], one.intersect.map(of), one.intersect.length);
  counted("intersectUnions").same(
    intersectUnions(many, others),
    one.intersectUnions.map(of),
    one.intersectUnions.length,
  );
  counted("subtract").same(subtract(many, others), one.subtract.map(of), one.subtract.length);
  counted("gaps").same(gaps(many), one.gaps.map(of), one.gaps.length);
  const [part = 0, whole = 1] = one.shareCovered ?? [];
  if (one.shareCovered !== null) counted("shareCovered").relative(shareCovered(a, many), part / whole, 2e-16);
  const [sum = 0, two = 2] = one.middle;
  counted("midpoint").same(midpoint(a), sum / two);
  counted("intervalLength").same(intervalLength(a), one.length);
  counted("overlapLength").same(overlapLength(a, b), one.overlapLength);
  counted("contact").same(contact(a, b), one.contact);
  counted("touches").same(touches(a, b), one.contact === "shared-end" || one.contact === "adjacent");
  counted("interval").same(
    [unwrap(safeInterval(x, x + 1)).from, interval(x, x + 1).to, point(x).from, point(x).to],
    [x, x + 1, x, x],
    4,
  );
});
