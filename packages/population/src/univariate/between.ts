import type { Interval } from "@tapewise/intervals";
import { requireNumber } from "../require-argument.ts";
import type { Distribution } from "./distribution.ts";

type Tails = Pick<Distribution, "cumulative" | "upperTail">;

/** The share of a continuous distribution between two bounds, from the tails that are small there. */
export function between(tails: Tails, middle: number, within: Interval): number {
  const { from, to } = within;
  requireNumber("within.from", from);
  requireNumber("within.to", to);
  if (from >= middle) return Math.max(tails.upperTail(from) - tails.upperTail(to), 0);
  if (to <= middle) return Math.max(tails.cumulative(to) - tails.cumulative(from), 0);
  return Math.max(1 - tails.cumulative(from) - tails.upperTail(to), 0);
}
