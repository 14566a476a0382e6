import type { ChartDimension } from "@tapewise/charts";
import type { CheckedPart } from "./body-check/body-check-item.ts";

/**
 * The dimensions that each part of a pack goes by, the most telling first: a part is judged by the first of them that
 * its size states. `unstated-hip-girth` is held against the girth where the belt sits, else the widest one.
 *
 * @example
 * ```ts
 * import { partDimensions } from "@tapewise/afterwards";
 * partDimensions.harness; // => ["torso-length", "back-waist-length", "stature"]
 * ```
 */
export const partDimensions: Readonly<Record<CheckedPart, readonly ChartDimension[]>> = {
  harness: ["torso-length", "back-waist-length", "stature"],
  belt: ["hip-belt-girth", "unstated-hip-girth", "hip-girth", "waist-girth"],
};
