import {
  type AllenRelation,
  allenRelations,
  compose,
  converse,
  gapBetween,
  hull,
  type Interval,
  interval,
  intervalLength,
  overlapLength,
  relation,
  union,
  unionLength,
} from "@tapewise/intervals";
import { describe, expect, test } from "vitest";
import {
  compositionCounts,
  compositionRows,
  type Ends,
  pairCases,
  relationCases,
} from "./intervals-allen.ts";
import { type Against, against } from "./table/against.ts";

const nameOf: ReadonlyMap<string, string> = new Map(relationCases.map(({ symbol, name }) => [symbol, name]));
const namesOf = (symbols: string) => symbols.split(" ").map((symbol) => nameOf.get(symbol));

function relationOf(symbol: string): AllenRelation {
  const found = allenRelations.find((name) => name === nameOf.get(symbol));
  if (found === undefined) throw new Error(`no relation has the symbol ${symbol}`);
  return found;
}

const fig2 = (name: string): Against =>
  against({
    of: `intervals.${name}`,
    source: "Allen 1983, Fig. 2, the thirteen relations",
    origin: "printed (from memory)",
    why: "words",
  });
const pairs = (name: string, ...others: readonly string[]): Against =>
  against({
    of: [`intervals.${name}`, ...others],
    source: "pairs of intervals with whole ends",
    origin: "recomputed in Python",
    why: "whole numbers",
  });

const of = ([from, to]: Ends): Interval => interval(from, to);

/** The definitions of Allen 1983, Fig. 2 (from memory), written out one by one, apart from our code. */
const definitions: Readonly<Record<AllenRelation, (a: Ends, b: Ends) => boolean>> = {
  before: (a, b) => a[1] < b[0],
  meets: (a, b) => a[1] === b[0],
  overlaps: (a, b) => a[0] < b[0] && b[0] < a[1] && a[1] < b[1],
  starts: (a, b) => a[0] === b[0] && a[1] < b[1],
  during: (a, b) => b[0] < a[0] && a[1] < b[1],
  finishes: (a, b) => b[0] < a[0] && a[1] === b[1],
  equals: (a, b) => a[0] === b[0] && a[1] === b[1],
  "finished-by": (a, b) => a[0] < b[0] && a[1] === b[1],
  contains: (a, b) => a[0] < b[0] && b[1] < a[1],
  "started-by": (a, b) => a[0] === b[0] && b[1] < a[1],
  "overlapped-by": (a, b) => b[0] < a[0] && a[0] < b[1] && b[1] < a[1],
  "met-by": (a, b) => a[0] === b[1],
  after: (a, b) => a[0] > b[1],
};

/** All proper intervals with whole ends from 0 to 5: three intervals have six ends, so six places do. */
const proper: readonly Ends[] = [0, 1, 2, 3, 4, 5].flatMap((from) =>
  [1, 2, 3, 4, 5].filter((to) => from < to).map((to): Ends => [from, to]),
);

/** The relation by the definitions; fails when they do not single one out. */
function relationByDefinition(a: Ends, b: Ends): AllenRelation {
  const [found, ...others] = allenRelations.filter((name) => definitions[name](a, b));
  if (found === undefined || others.length > 0) throw new Error(`not one relation for ${a} and ${b}`);
  return found;
}

describe("Allen 1983, Fig. 2: the thirteen relations", () => {
  test("are those of the paper, in the usual order", () => {
    expect(allenRelations).toHaveLength(13);
    expect(allenRelations).toEqual(relationCases.map(({ name }) => name));
  });

  test.each(relationCases)("$symbol: $a $name $b", ({ name, converse: other, a, b }) => {
    fig2("relation").same(relation(of(a), of(b)), name);
    fig2("relation").same(relation(of(b), of(a)), nameOf.get(other));
    fig2("converse").same(converse(relation(of(a), of(b))), nameOf.get(other));
  });

  test("hold by their definitions for every pair of the 15 intervals within 0 to 5", () => {
    expect(proper).toHaveLength(15);
    for (const a of proper) {
      for (const b of proper) expect(relation(of(a), of(b))).toBe(relationByDefinition(a, b));
    }
  });
});

describe("Allen 1983, Fig. 4: the transitivity table", () => {
  const entries = Object.entries(compositionRows).flatMap(([first, row]) =>
    Object.entries(row).map(([second, answer]) => ({ first, second, answer })),
  );

  test.each(entries)(
    "$first then $second allows $answer (recomputed in Python)",
    ({ first, second, answer }) => {
      against({
        of: "intervals.compose",
        source: "Allen 1983, Fig. 4, the transitivity table",
        origin: "recomputed in Python over all triples of intervals",
        why: "words",
      }).same(compose(relationOf(first), relationOf(second)), namesOf(answer));
    },
  );

  test("all 169 entries are what the triples of intervals within 0 to 5 show (recomputed here)", () => {
    const shown = new Map<string, Set<AllenRelation>>();
    for (const a of proper) {
      for (const b of proper) {
        for (const c of proper) {
          const key = `${relationByDefinition(a, b)} then ${relationByDefinition(b, c)}`;
          shown.set(key, (shown.get(key) ?? new Set()).add(relationByDefinition(a, c)));
        }
      }
    }
    expect(shown.size).toBe(169);
    for (const first of allenRelations) {
      for (const second of allenRelations) {
        const key = `${first} then ${second}`;
        const seen = shown.get(key);
        expect(compose(first, second), key).toEqual(allenRelations.filter((name) => seen?.has(name)));
      }
    }
  });

  test("has 97 entries of a single relation and 409 relations in all (from memory)", () => {
    const lengths = allenRelations.flatMap((first) =>
      allenRelations.map((second) => compose(first, second).length),
    );
    const byLength: Record<number, number> = {};
    for (const length of lengths) byLength[length] = (byLength[length] ?? 0) + 1;
    expect(byLength).toEqual(compositionCounts.byLength);
    expect(byLength[1]).toBe(97);
    expect(lengths.reduce((sum, length) => sum + length)).toBe(compositionCounts.total);
  });
});

describe("pairs of closed intervals (recomputed in Python)", () => {
  test.each(pairCases)("$a and $b: $relation, overlap $overlap, gap $gap, union $union", (pair) => {
    const a = of(pair.a);
    const b = of(pair.b);
    const gap = gapBetween(a, b);
    pairs("relation").same(relation(a, b), nameOf.get(pair.relation));
    pairs("overlapLength").same(overlapLength(a, b), pair.overlap);
    pairs("hull").same(hull(a, b), of(pair.hull));
    pairs("gapBetween", "intervals.intervalLength").same(
      gap === undefined ? 0 : intervalLength(gap),
      pair.gap,
    );
    pairs("union", "intervals.unionLength").same(unionLength(union(a, b)), pair.union);
  });
});
