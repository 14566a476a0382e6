import type { Cut } from "@tapewise/charts";

/**
 * How the cut of a pack suits the one asked for: 2 where it is that, 0 where it is made for other bodies, 1
 * for anything between: a cut for all, or none stated on either side.
 */
export function rankCut(own: Cut | undefined, cut: Cut | undefined): 0 | 1 | 2 {
  if (own === undefined || cut === undefined) return 1;
  if (own === cut) return 2;
  return own === "unisex" || cut === "unisex" ? 1 : 0;
}
