import { InvalidArgumentError } from "@tapewise/outcome";
import type { Landmark } from "./landmark-entry.ts";
import type { LandmarkId } from "./landmark-id.ts";
import { landmarks } from "./landmarks/data.ts";

/**
 * Everything about one point or level of the body: what it is, how to find it by touch, how to check
 * it, and which neighbours it is mistaken for.
 *
 * @throws {@link InvalidArgumentError} when the id is unknown.
 *
 * @example
 * ```ts
 * import { landmark } from "@tapewise/landmarks";
 * landmark("cervicale").everydayName; // => "the bump at the base of the neck"
 * landmark("cervicale").confusions.map((confusion) => confusion.landmark); // => ["t1", "c6"]
 * ```
 */
export function landmark(id: LandmarkId): Landmark {
  const found = landmarks.find((entry) => entry.id === id);
  if (found === undefined) throw new InvalidArgumentError("id", id, "one of the landmark ids");
  return found;
}
