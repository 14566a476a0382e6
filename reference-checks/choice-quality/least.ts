/** The first place of the smallest cost. */
export function least<T>(items: readonly T[], cost: (item: T) => number): number {
  let best = 0;
  let lowest = Number.POSITIVE_INFINITY;
  items.forEach((item, i) => {
    const own = cost(item);
    if (own < lowest) {
      best = i;
      lowest = own;
    }
  });
  return best;
}
