import type { Transport, Transported } from "./transport.ts";

/**
 * Of all assignments that cost the least, the one in which the first member has the first place that they have in any
 * of them, then the second member, and so on.
 *
 * The assignments of least cost are those in which everybody is where cost less price is least and every place with a
 * price below 0 is full. So a member may move to an earlier such place if those who are pushed on from there can move
 * on likewise, up to a place that may take one more: the one that was left, or, if that need not be full, any with room.
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
    const mayStayOpen = (prices[left] ?? 0) === 0;
    const ends = counts.flatMap((_, place) =>
      place === left || (mayStayOpen && (room[place] ?? 0) > 0) ? [place] : [],
    );
    const moves = new Map<number, Move | undefined>(ends.map((place) => [place, undefined]));
    const queue = [...ends];
    for (const to of queue) {
      for (const other of takers[to] ?? []) {
        const from = at[other] ?? 0;
        if (other <= member || moves.has(from)) continue;
        moves.set(from, { other, to });
        queue.push(from);
      }
    }
    const first = earlier.find((place) => moves.has(place));
    if (first === undefined) continue;
    let place = first;
    at[member] = first;
    for (let move = moves.get(place); move !== undefined; move = moves.get(place)) {
      at[move.other] = move.to;
      place = move.to;
    }
    room[left] = (room[left] ?? 0) + 1;
    room[place] = (room[place] ?? 0) - 1;
  }
  return at;
}

/** Somebody who could move on at no cost, and where to. */
interface Move {
  readonly other: number;
  readonly to: number;
}
