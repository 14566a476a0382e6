import { type AllenRelation, allenRelations } from "./allen-relation.ts";

/** Places of a number against an interval: 0 below it, 1 at its start, 2 inside, 3 at its end, 4 above. */
type Place = 0 | 1 | 2 | 3 | 4;

/** Where a relation puts the two bounds of `a` against `b`. */
const PLACES: Readonly<Record<AllenRelation, readonly [from: Place, to: Place]>> = {
  before: [0, 0],
  meets: [0, 1],
  overlaps: [0, 2],
  starts: [1, 2],
  during: [2, 2],
  finishes: [2, 3],
  equals: [1, 3],
  "finished-by": [0, 3],
  contains: [0, 4],
  "started-by": [1, 4],
  "overlapped-by": [2, 4],
  "met-by": [3, 4],
  after: [4, 4],
};

/**
 * All relations that `a` can have to `c` when `a` has relation `first` to `b`, and `b` has relation
 * `second` to `c`, in the order of `allenRelations`. This is the transitivity table of Allen (1983,
 * Fig. 4), for intervals longer than a point.
 *
 * The table is not stored but follows from the bounds: each bound of `a` is pinned against `b`, which
 * is pinned against `c`, so each can fall in one run of places against `c`; the answer is every
 * relation whose bounds fall in those runs.
 *
 * @example
 * ```ts
 * import { compose } from "@tapewise/intervals";
 * compose("starts", "during"); // => ["during"]
 * compose("overlaps", "overlaps"); // => ["before", "meets", "overlaps"]
 * ```
 */
export function compose(first: AllenRelation, second: AllenRelation): readonly AllenRelation[] {
  const [ofFrom, ofTo] = PLACES[first];
  const middle = PLACES[second];
  const froms = reach(ofFrom, middle);
  const tos = reach(ofTo, middle);
  return allenRelations.filter((candidate) => {
    const [from, to] = PLACES[candidate];
    return isWithin(from, froms) && isWithin(to, tos);
  });
}

/** The lowest and highest place against `c` of a number at `place` against `b`, whose bounds are at `middle`. */
function reach(place: Place, [start, end]: readonly [Place, Place]): readonly [number, number] {
  switch (place) {
    case 0:
      return [0, nextBelow(start)];
    case 1:
      return [start, start];
    case 2:
      return [nextAbove(start), nextBelow(end)];
    case 3:
      return [end, end];
    case 4:
      return [nextAbove(end), 4];
  }
}

/** Above a single number lies at least the next stretch; above a number on a stretch, that stretch too. */
function nextAbove(place: Place): number {
  return isNumber(place) ? place + 1 : place;
}

function nextBelow(place: Place): number {
  return isNumber(place) ? place - 1 : place;
}

/** The start and the end of an interval are single numbers; the other places are stretches. */
function isNumber(place: Place): boolean {
  return place === 1 || place === 3;
}

function isWithin(place: Place, [lowest, highest]: readonly [number, number]): boolean {
  return lowest <= place && place <= highest;
}
