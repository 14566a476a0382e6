import type { Transport, Transported } from "./transport.ts";

/**
 * Of all assignments that cost the least, the one in which the first member has the first place that they have in any
 * of them, then the second member, and so on.
 *
 * The assignments of least cost are those in which everybody is where cost less price is least and every place with a
 * price below 0 is full. So a member may move to an earlier such place if one too many can be passed on from there, by
 * others who move likewise, up to the place that was left; and a place with room may keep one more where a place on the
 * way that need not be full keeps one fewer.
 */
export function firstOfEquals({ costs, counts }: Transport, { places, prices }: Transported): Int32Array {
  const at = Int32Array.from(places);
  const room = counts.map((count) => count);
  for (const place of at) room[place] = (room[place] ?? 0) - 1;
  const tight = costs.map((row, member) => {
    const reduced = (place: number): number => (row[place] ?? 0) - (prices[place] ?? 0);
    const least = reduced(at[member] ?? 0);
    return counts.flatMap((_, place) => (reduced(place) === least ? [place] : []));
  });
  const takers: number[][] = counts.map(() => []);
  for (const [member, own] of tight.entries()) for (const place of own) takers[place]?.push(member);

  for (const [member, own] of tight.entries()) {
    const left = at[member] ?? 0;
    const earlier = own.filter((place) => place < left);
    if (earlier.length === 0) continue;
    // From which places one too many can be passed on, by moves that cost nothing, to the place that was left.
    const onward = new Map<number, Move>();
    const queue = [left];
    let isOpened = false;
    for (const to of queue) {
      for (const other of takers[to] ?? []) {
        const from = at[other] ?? 0;
        if (other <= member || from === left || onward.has(from)) continue;
        onward.set(from, { other, to });
        queue.push(from);
      }
      // A place that need not be full may give one away for nothing, so that any with room may keep one.
      if (isOpened || (prices[to] ?? 0) < 0) continue;
      isOpened = true;
      for (const [from, free] of room.entries()) {
        if (free <= 0 || from === left || onward.has(from)) continue;
        onward.set(from, { other: undefined, to });
        queue.push(from);
      }
    }
    const first = earlier.find((place) => onward.has(place));
    if (first === undefined) continue;
    at[member] = first;
    for (let place = first; place !== left; ) {
      const move = onward.get(place);
      if (move === undefined) break;
      if (move.other === undefined) {
        room[place] = (room[place] ?? 0) - 1;
        room[move.to] = (room[move.to] ?? 0) + 1;
      } else {
        at[move.other] = move.to;
      }
      place = move.to;
    }
  }
  return at;
}

/** How a place passes one on: by somebody who moves, or by keeping one more where another place keeps one fewer. */
interface Move {
  readonly other: number | undefined;
  readonly to: number;
}
