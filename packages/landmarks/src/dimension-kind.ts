import { InvalidArgumentError } from "@tapewise/outcome";
import type { DimensionKind } from "./dimension-entry.ts";
import { type DimensionId, dimensionIds } from "./dimension-id.ts";

// Across the back between the arms the tape follows the skin, whatever the name says.
const LENGTHS: readonly DimensionId[] = [
  "torso-length",
  "back-waist-length",
  "shoulder-length",
  "interscye-breadth",
];

/**
 * How a dimension runs. It is the `kind` of its guide, told without the guide, so that a program that
 * shows none does not carry one.
 *
 * @throws {@link InvalidArgumentError} when the id is unknown.
 *
 * @example
 * ```ts
 * import { dimensionKind } from "@tapewise/landmarks";
 * dimensionKind("hip-belt-girth"); // => "girth"
 * ```
 */
export function dimensionKind(id: DimensionId): DimensionKind {
  if (!dimensionIds.includes(id)) throw new InvalidArgumentError("id", id, "one of the dimension ids");
  if (LENGTHS.includes(id)) return "length along the body";
  if (id.endsWith("-girth")) return "girth";
  return id.endsWith("-breadth") ? "breadth" : "straight height";
}
