import { type Interval, interval } from "@tapewise/intervals";
import type { Box, Variable } from "@tapewise/population";

/** A box that some of the given boxes hold whole and the others do not touch. */
export interface Cell {
  readonly box: Box;
  /** The given boxes that hold it, by their place in the list. */
  readonly inside: readonly number[];
}

/** A place between two numbers, or just before or just after one. */
interface Cut {
  readonly at: number;
  readonly after: 0 | 1;
}

/**
 * Takes the union of boxes apart into cells that do not overlap and that together are the union: exact, open and
 * closed ends included. Sweeps along one axis after the other and joins neighbours that the same boxes hold.
 */
export function cellsOf(boxes: readonly Box[], axes: readonly Variable[]): readonly Cell[] {
  const sweep = (depth: number, active: readonly number[], box: Box): readonly Cell[] => {
    const axis = axes[depth];
    if (axis === undefined) return [{ box, inside: active }];
    return slabsOf(boxes, active, axis).flatMap(({ within, inside }) =>
      sweep(depth + 1, inside, within === undefined ? box : { ...box, [axis]: within }),
    );
  };
  const all = boxes.map((_, place) => place);
  return all.length === 0 ? [] : sweep(0, all, {});
}

interface Slab {
  /** `undefined` where none of the boxes has a bound. */
  readonly within: Interval | undefined;
  readonly inside: readonly number[];
}

function slabsOf(boxes: readonly Box[], active: readonly number[], axis: Variable): readonly Slab[] {
  const bounds = active.map((place) => {
    const within = boxes[place]?.[axis];
    return within === undefined ? undefined : { place, begin: beginOf(within), end: endOf(within) };
  });
  const bounded = bounds.filter((bound) => bound !== undefined);
  if (bounded.length === 0) return [{ within: undefined, inside: active }];
  const first: Cut = { at: Number.NEGATIVE_INFINITY, after: 1 };
  const last: Cut = { at: Number.POSITIVE_INFINITY, after: 0 };
  const cuts = [first, ...bounded.flatMap(({ begin, end }) => [begin, end]), last]
    .toSorted(compareCuts)
    .filter((cut, index, all) => index === 0 || compareCuts(cut, all[index - 1] ?? first) !== 0);

  const slabs: { begin: Cut; end: Cut; inside: readonly number[] }[] = [];
  for (const [index, end] of cuts.entries()) {
    const begin = cuts[index - 1];
    if (begin === undefined) continue;
    const inside = active.filter((_, k) => {
      const bound = bounds[k];
      return (
        bound === undefined || (compareCuts(bound.begin, begin) <= 0 && compareCuts(bound.end, end) >= 0)
      );
    });
    const previous = slabs.at(-1);
    if (previous !== undefined && previous.inside.join() === inside.join()) previous.end = end;
    else slabs.push({ begin, end, inside });
  }
  return slabs
    .filter(({ inside }) => inside.length > 0)
    .map(({ begin, end, inside }) => ({
      within: interval(begin.at, end.at, { fromClosed: begin.after === 0, toClosed: end.after === 1 }),
      inside,
    }));
}

function beginOf({ from, fromClosed }: Interval): Cut {
  return { at: from, after: fromClosed ? 0 : 1 };
}

function endOf({ to, toClosed }: Interval): Cut {
  return { at: to, after: toClosed ? 1 : 0 };
}

function compareCuts(a: Cut, b: Cut): number {
  return a.at === b.at ? a.after - b.after : a.at - b.at;
}
