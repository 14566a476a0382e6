import { InvalidArgumentError } from "@tapewise/outcome";
import type { DimensionId } from "./dimension-id.ts";
import { spokenNames } from "./names/spoken-names.ts";

/**
 * What a dimension is called in a sentence. It needs these names only, so that a program that shows no
 * guide carries none.
 *
 * @throws {@link InvalidArgumentError} when the id is unknown.
 *
 * @example
 * ```ts
 * import { dimensionName } from "@tapewise/landmarks";
 * dimensionName("hip-belt-girth"); // => "hip-belt girth"
 * ```
 */
export function dimensionName(id: DimensionId): string {
  if (!Object.hasOwn(spokenNames, id)) throw new InvalidArgumentError("id", id, "one of the dimension ids");
  return spokenNames[id];
}
