import { InvalidArgumentError } from "@tapewise/outcome";
import type { Dimension } from "./dimension-entry.ts";
import type { DimensionId } from "./dimension-id.ts";
import { dimensionGuides } from "./dimensions/data.ts";
import { dimensionNames } from "./names/data.ts";

/**
 * Everything about one dimension: names, definition, landmarks, the ways to take it, and the slips to
 * look out for. Its cautions come from `cautionsFor`, its limits from `plausibleLimits`. For all of
 * them, map `dimensionIds`.
 *
 * @throws {@link InvalidArgumentError} when the id is unknown; for text that a user wrote take
 * `safeParseDimension`.
 *
 * @example
 * ```ts
 * import { dimension, dimensionIds } from "@tapewise/landmarks";
 * const torso = dimension("torso-length");
 * torso.landmarks; // => ["cervicale", "iliocristale", "crest-line-at-spine"]
 * torso.ways[0].who; // => "helper"
 * dimensionIds.map(dimension).length; // => 16
 * ```
 */
export function dimension(id: DimensionId): Dimension {
  const guide = dimensionGuides.find((entry) => entry.id === id);
  const names = dimensionNames.find((entry) => entry.id === id);
  if (guide === undefined || names === undefined) {
    throw new InvalidArgumentError("id", id, "one of the dimension ids");
  }
  return { ...names, ...guide };
}
