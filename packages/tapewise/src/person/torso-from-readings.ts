import { torsoFromHeights } from "@tapewise/landmarks";
import { type Estimate, estimateDifference } from "@tapewise/measurement";
import { failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";

/**
 * A stand-in for the torso length where it was not read itself, from the heights of cervicale and iliac
 * crest; `undefined` where it was read, or where one of the heights was not.
 *
 * Codes: `torso-heights-reversed`, and the warning `torso-length-straight`, which always comes with it.
 */
export function torsoFromReadings(estimates: readonly Estimate[]): Outcome<Estimate | undefined> {
  const of = (dimension: Estimate["dimension"]): Estimate | undefined =>
    estimates.find((estimate) => estimate.dimension === dimension);
  const cervicale = of("cervicale-height");
  const crest = of("iliac-crest-height");
  if (of("torso-length") !== undefined || cervicale === undefined || crest === undefined) {
    return success(undefined);
  }
  const straight = torsoFromHeights(cervicale.mm, crest.mm);
  const issues = straight.issues.map(
    (issue): Issue => ({ ...issue, path: ["readings", "cervicale-height"] }),
  );
  if (!straight.ok) return hasIssues(issues) ? failure(issues) : straight;
  return success(estimateDifference("torso-length", cervicale, crest), issues);
}
