import { InvalidArgumentError } from "@tapewise/outcome";
import type { Caution } from "./cautions/caution.ts";
import { cautions } from "./cautions/data.ts";
import { type DimensionId, dimensionIds } from "./dimension-id.ts";

/**
 * The cautions that belong to a dimension, in the order in which they should be read.
 *
 * @throws {@link InvalidArgumentError} when the id is unknown.
 *
 * @example
 * ```ts
 * import { cautionsFor } from "@tapewise/landmarks";
 * cautionsFor("interscye-breadth").map((caution) => caution.code);
 * // => ["ask-first", "injury-or-surgery", "growing-child"]
 * ```
 */
export function cautionsFor(dimension: DimensionId): readonly Caution[] {
  if (!dimensionIds.includes(dimension)) {
    throw new InvalidArgumentError("dimension", dimension, "one of the dimension ids");
  }
  return cautions.filter((caution) => caution.dimensions.includes(dimension));
}
