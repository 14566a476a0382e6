import type { Look } from "./plan-look.ts";
import type { DecidingPart, Verdict } from "./recommendation.ts";
import type { PlainVerdict } from "./verdict.ts";

/** What stands of one part of a pack. */
export interface PartStanding {
  readonly plain: PlainVerdict;
  /** Whether a reading that binds its size is questioned, or one that it cannot do without is missing. */
  readonly isOpen: boolean;
  readonly look?: Look | undefined;
}

/** What pack, belt and further readings amount to together. */
export interface Conclusion {
  readonly verdict: Verdict;
  readonly decidedBy: DecidingPart;
  readonly outside?: PlainVerdict["outside"];
}

/**
 * One verdict for a pack and its belt: whatever is open is to be measured first; else the worse of the
 * two stands, and the pack goes before the belt.
 */
export function conclude(pack: PartStanding, belt: PartStanding | undefined): Conclusion {
  const isBelts = belt !== undefined && isFit(pack.plain) && !isFit(belt.plain);
  const { verdict, outside } = isBelts ? belt.plain : pack.plain;
  const beyond = outside === undefined ? {} : { outside };
  if (isAgain(pack)) return { verdict: "measure-again", decidedBy: "pack", ...beyond };
  if (belt !== undefined && isAgain(belt)) return { verdict: "measure-again", decidedBy: "belt", ...beyond };
  return { verdict, decidedBy: isBelts ? "belt" : "pack", ...beyond };
}

function isAgain({ isOpen, look }: PartStanding): boolean {
  return isOpen || look !== undefined;
}

function isFit({ verdict }: PlainVerdict): boolean {
  return verdict === "fits" || verdict === "two-sizes-fit";
}
