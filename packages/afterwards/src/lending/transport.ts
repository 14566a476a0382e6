/** Who may take what, at what cost, and how many there are of each. Costs are whole numbers, so that sums are exact. */
export interface Transport {
  /** For each member the cost of each place; `Infinity` where it must not be. The last place is to go without. */
  readonly costs: readonly Float64Array[];
  /** How many each place has room for; the last has room for everybody. */
  readonly counts: readonly number[];
}

/** An assignment of least cost, and prices that prove it. */
export interface Transported {
  /** The place of each member. */
  readonly places: Int32Array;
  /**
   * Prices of the places, 0 or less: every member is where cost less price is least, and a place with a price below 0
   * is full. Whatever assignment has these two properties costs the least (linear programming duality).
   */
  readonly prices: Float64Array;
}

/**
 * Assigns everybody a place at the least cost: the members come one after the other, and each takes the shortest path
 * of moves to a place with room (successive shortest paths with prices, after R. Jonker & A. Volgenant (1987),
 * Computing 38, 325–340; here with rooms for several, so that a path runs over places and not over single packs).
 */
export function transport({ costs, counts }: Transport): Transported {
  const width = counts.length;
  const prices = new Float64Array(width);
  const places = new Int32Array(costs.length).fill(-1);
  const held: number[][] = counts.map(() => []);
  const distance = new Float64Array(width);
  const mover = new Int32Array(width);
  const isDone = new Uint8Array(width);
  const rowOf = (member: number): Float64Array => costs[member] ?? NOBODY;

  const relax = (member: number, base: number): void => {
    const row = rowOf(member);
    for (let place = 0; place < width; place += 1) {
      if (isDone[place] === 1) continue;
      const through = base + (row[place] ?? 0) - (prices[place] ?? 0);
      if (through < (distance[place] ?? 0)) {
        distance[place] = through;
        mover[place] = member;
      }
    }
  };

  for (let newcomer = 0; newcomer < costs.length; newcomer += 1) {
    distance.fill(Number.POSITIVE_INFINITY);
    isDone.fill(0);
    relax(newcomer, 0);
    let end = nearest(distance, isDone);
    while ((held[end]?.length ?? 0) >= (counts[end] ?? 0)) {
      isDone[end] = 1;
      const here = distance[end] ?? 0;
      const price = prices[end] ?? 0;
      for (const member of held[end] ?? []) relax(member, here - ((rowOf(member)[end] ?? 0) - price));
      end = nearest(distance, isDone);
    }
    const length = distance[end] ?? 0;
    for (let place = 0; place < width; place += 1) {
      if (isDone[place] === 1) prices[place] = (prices[place] ?? 0) + (distance[place] ?? 0) - length;
    }
    for (let to = end; to !== -1; ) {
      const member = mover[to] ?? newcomer;
      const from = places[member] ?? -1;
      places[member] = to;
      held[to]?.push(member);
      if (from !== -1) held[from]?.splice(held[from].indexOf(member), 1);
      to = from;
    }
  }
  return { places, prices };
}

const NOBODY: Float64Array = Float64Array.of();

/** The first of the nearest places that are not done. */
function nearest(distance: Float64Array, isDone: Uint8Array): number {
  let best = distance.length - 1;
  let least = Number.POSITIVE_INFINITY;
  for (let place = 0; place < distance.length; place += 1) {
    if (isDone[place] === 1) continue;
    const here = distance[place] ?? 0;
    if (here < least) {
      least = here;
      best = place;
    }
  }
  return best;
}
