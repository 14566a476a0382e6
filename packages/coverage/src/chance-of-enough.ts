import { logGamma } from "@tapewise/statistics";

/** The people who come to one size, with the sizes in order. */
export interface Row {
  /** Share of people who take this size and no other. */
  readonly own: number;
  /** Share of people who take this size or the next one, whichever there is. */
  readonly shared: number;
}

/** What is smaller is passed over: less than what rounding costs. */
const NEGLIGIBLE = 1e-16;

/**
 * The chance that a stock is enough for `members` people drawn at random, as a function of the stock in the order of
 * the rows. People who are in no row take nothing.
 *
 * Exact, by convolution: each size serves those whom the size before could not, then its own, then as many as it can
 * of those who may also have the next. The kinds of people are drawn as independent Poisson numbers, and the chance
 * is taken given that they are `members` in all, which is the multinomial distribution (B. Levin 1981, Ann. Statist.
 * 9, 1123–1126).
 */
export function chanceOfEnough(rows: readonly Row[], members: number): (stock: readonly number[]) => number {
  const drawn = (share: number): Float64Array => poisson(share * members, members);
  const tables = rows.map(({ own, shared }) => ({ own: drawn(own), shared: drawn(shared) }));
  const none = drawn(
    Math.max(
      0,
      rows.reduce((rest, { own, shared }) => rest - own - shared, 1),
    ),
  );
  const all = drawn(1)[members] ?? 1;
  const width = members + 1;
  return (stock) => {
    // state[n · width + w]: n people have come so far, and w of them wait for the next size.
    let state: Float64Array = new Float64Array(width * width);
    state[0] = 1;
    for (const [place, table] of tables.entries()) {
      const limit = Math.min(stock[place] ?? 0, members);
      const left = serveOwn(state, table.own, limit, width);
      state = serveShared(left, table.shared, limit, width);
    }
    let enough = 0;
    for (let n = 0; n <= members; n += 1) enough += (state[n * width] ?? 0) * (none[members - n] ?? 0);
    return Math.min(1, enough / all);
  };
}

/** From people who wait to packs that are left, once those who can take nothing else have come. */
function serveOwn(state: Float64Array, own: Float64Array, limit: number, width: number): Float64Array {
  const left = new Float64Array(width * width);
  for (let n = 0; n < width; n += 1) {
    for (let waiting = 0; waiting <= Math.min(n, limit); waiting += 1) {
      const chance = state[n * width + waiting] ?? 0;
      if (chance < NEGLIGIBLE) continue;
      const most = Math.min(width - 1 - n, limit - waiting);
      for (let x = 0; x <= most; x += 1) {
        const at = (n + x) * width + limit - waiting - x;
        left[at] = (left[at] ?? 0) + chance * (own[x] ?? 0);
      }
    }
  }
  return left;
}

/** From packs that are left to people who wait, once those who may also have the next size have come. */
function serveShared(left: Float64Array, shared: Float64Array, limit: number, width: number): Float64Array {
  const state = new Float64Array(width * width);
  for (let n = 0; n < width; n += 1) {
    for (let packs = 0; packs <= limit; packs += 1) {
      const chance = left[n * width + packs] ?? 0;
      if (chance < NEGLIGIBLE) continue;
      for (let x = 0; x < width - n; x += 1) {
        const both = chance * (shared[x] ?? 0);
        if (both === 0 && x > 0) break;
        const at = (n + x) * width + Math.max(0, x - packs);
        state[at] = (state[at] ?? 0) + both;
      }
    }
  }
  return state;
}

/** Poisson probabilities of 0 to `most`; those that are negligible are 0 exactly. */
function poisson(mean: number, most: number): Float64Array {
  const out = new Float64Array(most + 1);
  if (mean <= 0) {
    out[0] = 1;
    return out;
  }
  for (let k = 0; k <= most; k += 1) {
    const chance = Math.exp(k * Math.log(mean) - mean - logGamma(k + 1));
    out[k] = chance < NEGLIGIBLE && k > mean ? 0 : chance;
  }
  return out;
}
