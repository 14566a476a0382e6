import { InvalidArgumentError } from "@tapewise/outcome";
import type { DimensionId } from "./dimension-id.ts";
import { dimensionNames } from "./names/data.ts";

/**
 * What a dimension is called in a sentence. It needs the names only, so that a program that shows no
 * guide does not carry one.
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
  const names = dimensionNames.find((entry) => entry.id === id);
  if (names === undefined) throw new InvalidArgumentError("id", id, "one of the dimension ids");
  return names.name;
}
