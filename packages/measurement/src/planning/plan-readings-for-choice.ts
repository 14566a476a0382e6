import { requireCount, requireShare } from "../require-number.ts";
import { chanceOfRightSize, type LengthBelief } from "./chance-of-right-size.ts";
import { type ReadingError, requireReadingError, uncertaintyOf } from "./reading-error.ts";
import type { SizeBounds } from "./size-regions.ts";

/** What is to be chosen, for whom and how surely. */
export interface ChoiceToPlan {
  readonly error: ReadingError;
  /** The sizes of one dimension, in mm. */
  readonly sizes: readonly SizeBounds[];
  readonly belief: LengthBelief;
  /** Wanted chance of the right size, between 0 and 1. */
  readonly wantedChance: number;
  /** Where to stop; 100 readings where it is left out. */
  readonly mostReadings?: number;
}

/** How many readings for a chance of the right size. */
export interface ChoicePlan {
  readonly isReachable: boolean;
  /** The fewest readings that are enough; absent where none are. */
  readonly count?: number;
  /** The chance with that many readings, or with the most that are taken. */
  readonly chance: number;
  /** The chance with one reading. */
  readonly chanceOfOne: number;
  /** The chance when readings go on for ever: the lasting part of the error keeps it below `possibleChance`. */
  readonly chanceAtBest: number;
  /** The chance with no error at all: the share of such people that any size is made for. */
  readonly possibleChance: number;
  /** What stands in the way, if anything does. */
  readonly reason?: "sizes" | "lasting" | "too-many";
}

/** More readings than anybody takes for one pack. Assumption. */
const MOST_READINGS = 100;

/**
 * How many readings give a wanted chance of the right size, as {@link chanceOfRightSize} reckons it, or what
 * stands in the way: `sizes` that leave too many people out, a `lasting` part of the error that no number of
 * readings touches, or too many readings. The chance rises with every reading, so the first count that is
 * enough is found by halving.
 *
 * @throws {@link InvalidArgumentError} as `chanceOfRightSize` does, and for a chance that is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { planReadingsForChoice } from "@tapewise/measurement";
 * const plan = planReadingsForChoice({
 *   error: { perReadingMm: 8, lastingMm: 3 },
 *   sizes: [{ from: 380, to: 435 }, { from: 425, to: 480 }, { from: 470, to: 530 }],
 *   belief: { meanMm: 455, sdMm: 25 },
 *   wantedChance: 0.97,
 * });
 * [plan.count, plan.chanceOfOne.toFixed(3)]; // => [3, "0.936"]
 * ```
 */
export function planReadingsForChoice(choice: ChoiceToPlan): ChoicePlan {
  const { error, sizes, belief, wantedChance, mostReadings = MOST_READINGS } = choice;
  requireReadingError(error);
  requireShare("wantedChance", wantedChance);
  requireCount("mostReadings", mostReadings);
  const chanceAt = (uncertaintyMm: number): number => chanceOfRightSize(sizes, belief, uncertaintyMm);
  const chanceOf = (count: number): number => chanceAt(uncertaintyOf(error, count));
  const bounds = {
    chanceOfOne: chanceOf(1),
    chanceAtBest: chanceAt(error.lastingMm),
    possibleChance: chanceAt(0),
  };
  const most = chanceOf(mostReadings);
  if (most < wantedChance) {
    const reason =
      bounds.possibleChance < wantedChance
        ? "sizes"
        : bounds.chanceAtBest < wantedChance
          ? "lasting"
          : "too-many";
    return { isReachable: false, chance: most, ...bounds, reason };
  }
  let short = 0;
  let count = mostReadings;
  while (count - short > 1) {
    const middle = Math.floor((short + count) / 2);
    if (chanceOf(middle) >= wantedChance) count = middle;
    else short = middle;
  }
  return { isReachable: true, count, chance: chanceOf(count), ...bounds };
}
