import { compareFit } from "./compare-fit.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import type { SizeFit } from "./recommendation.ts";
import { roomIn } from "./room-in.ts";

/**
 * Sizes from the best to the worst: the likelier fit, then the smaller expected misfit, then more room
 * to the nearer end in the main dimension. What is equal in all of these stands in order of the names,
 * so that the order of the chart plays no part.
 */
export function rankSizes(
  fits: readonly SizeFit[],
  main: JudgedDimension,
  policy: FitPolicy,
): readonly SizeFit[] {
  return fits.toSorted(
    (a, b) =>
      compareFit(a, b, policy) ||
      compareRooms(roomIn(b, main), roomIn(a, main)) ||
      (a.size === b.size ? 0 : a.size < b.size ? -1 : 1),
  );
}

/** Both may be infinite; a millionth of a millimetre is rounding and no room. */
function compareRooms(a: number, b: number): number {
  const [stepsOfA, stepsOfB] = [Math.round(a * 1e6), Math.round(b * 1e6)];
  return stepsOfA === stepsOfB ? 0 : stepsOfA - stepsOfB;
}
