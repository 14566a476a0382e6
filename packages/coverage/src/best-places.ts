import type { CutGrid } from "./cut-grid.ts";

/** For each number of ranges from 1 up: the places at which they best begin. */
export type BestPlaces = readonly (readonly number[])[];

/**
 * The best places for 1, 2, … `count` ranges, exactly, by dynamic programming: what is best for the last range
 * depends on where the one before begins and on nothing else. Of equally good places the first.
 */
export function bestPlaces(grid: CutGrid, count: number, goal: "served" | "misfit"): BestPlaces {
  const size = grid.starts.length;
  // Loss that the first ranges leave up to their last one; for people served it is their share, negative.
  const isServed = goal === "served";
  const step = (earlier: number, place: number): number =>
    isServed ? -grid.added(earlier, place) : grid.misfitBetween(earlier, place);
  let loss = Float64Array.from(grid.starts, (_, place) =>
    isServed ? -(grid.within[place] ?? 0) : grid.misfitBelow(place),
  );
  const before: Int32Array[] = [];
  const answers: (readonly number[])[] = [];
  for (let ranges = 1; ranges <= count; ranges += 1) {
    if (ranges > 1) {
      const next = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
      const from = new Int32Array(size).fill(-1);
      for (let place = ranges - 1; place < size; place += 1) {
        for (let earlier = ranges - 2; earlier < place; earlier += 1) {
          const value = (loss[earlier] ?? 0) + step(earlier, place);
          if (value < (next[place] ?? 0)) {
            next[place] = value;
            from[place] = earlier;
          }
        }
      }
      loss = next;
      before.push(from);
    }
    let [best, least] = [ranges - 1, Number.POSITIVE_INFINITY];
    for (let place = ranges - 1; place < size; place += 1) {
      const value = (loss[place] ?? 0) + (isServed ? 0 : grid.misfitAbove(place));
      if (value < least) [best, least] = [place, value];
    }
    answers.push(traceBack(before, best));
  }
  return answers;
}

function traceBack(before: readonly Int32Array[], last: number): readonly number[] {
  const places = [last];
  let at = last;
  for (const from of before.toReversed()) {
    at = from[at] ?? 0;
    places.unshift(at);
  }
  return places;
}
