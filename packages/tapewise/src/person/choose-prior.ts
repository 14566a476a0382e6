import { contains } from "@tapewise/intervals";
import { plausibleLimits } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { createIssue, type Outcome, success } from "@tapewise/outcome";
import { menReference, referencePrior, womenReference } from "@tapewise/population";
import type { Millimetres } from "@tapewise/units";
import { personIssues } from "./person-issues.ts";
import type { PersonLine } from "./person-line.ts";

/**
 * What is taken to be known of people beforehand.
 *
 * - `automatic`: the reference figures where both the cut and the stature are given, and people of that
 *   stature were surveyed, else nothing.
 * - `reference`: the reference figures of the cut, with the stature where it is given.
 * - `none`: nothing.
 */
export type PriorChoice = "automatic" | "reference" | "none";

/** What is known of a person beforehand, with warnings where that is doubtful. */
export function choosePrior(
  line: PersonLine,
  statureMm: Millimetres | undefined,
  choice: PriorChoice,
): Outcome<Prior | undefined> {
  if (choice === "none") return success(undefined);
  const { cut } = line;
  if (cut === undefined) {
    const asked = choice === "reference";
    return success(
      undefined,
      asked ? [createIssue(personIssues, "person-prior-needs-cut", { path: ["cut"] })] : [],
    );
  }
  if (statureMm === undefined) return success(choice === "reference" ? referencePrior({ cut }) : undefined);

  const about = {
    path: line.stature === undefined ? ["readings", "stature"] : ["stature"],
    received: line.stature ?? `${statureMm} mm`,
  };
  if (!contains(plausibleLimits("stature", "child"), statureMm)) {
    const facts = { statureMm };
    return success(undefined, [createIssue(personIssues, "person-stature-implausible", { ...about, facts })]);
  }
  const prior = referencePrior({ cut, statureMm });
  const { label, surveyedStatureMm } = cut === "women" ? womenReference : menReference;
  const { from: fromMm, to: toMm } = surveyedStatureMm;
  if (statureMm >= fromMm && statureMm <= toMm) return success(prior);
  // Along a straight line the figures run on to children, whose build they do not tell.
  const isUsed = choice === "reference";
  const use = isUsed ? "say little here" : "were not used";
  const facts = { statureMm, fromMm, toMm, label, use };
  const issue = createIssue(personIssues, "person-stature-not-surveyed", { ...about, facts });
  return success(isUsed ? prior : undefined, [issue]);
}
