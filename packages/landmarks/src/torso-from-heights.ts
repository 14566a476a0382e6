import {
  createIssue,
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { type Millimetres, millimetres } from "@tapewise/units";
import { landmarksIssues } from "./issues.ts";

/**
 * By how much the way along the back is longer than the straight height between its ends, in
 * millimetres: mean way from C7 to the navel level 425.4, less mean heights 1395.7 - 980.1, in the
 * 1,986 women of ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), rounded to 1 mm. For men, and down
 * to the iliac crest only, it is taken over by assumption.
 */
export const meanCurveSurplusMm = 10;

/**
 * A stand-in for the torso length from two heights above the same floor: cervicale height minus
 * iliac-crest height, in millimetres. Shoes cancel out, as long as they were worn for both.
 *
 * The result is straight, not along the curve of the spine, so it is a little short: the warning
 * `torso-length-straight` always comes with it and says by how much on average. Nothing is added to
 * the result, since the curve differs from person to person.
 *
 * Issue codes: `torso-height-not-positive` and `torso-heights-reversed` (also when both are equal).
 *
 * @throws {@link InvalidArgumentError} when a height is not a finite number.
 *
 * @example
 * ```ts
 * import { torsoFromHeights } from "@tapewise/landmarks";
 * import { unwrap } from "@tapewise/outcome";
 * import { millimetres } from "@tapewise/units";
 * const torso = torsoFromHeights(millimetres(1440), millimetres(1015));
 * unwrap(torso); // => 425
 * torso.issues[0]?.code; // => "torso-length-straight"
 * torsoFromHeights(millimetres(1015), millimetres(1440)).ok; // => false
 * ```
 */
export function torsoFromHeights(
  cervicaleHeight: Millimetres,
  iliacCrestHeight: Millimetres,
): Outcome<Millimetres> {
  const heights = { cervicaleHeight, iliacCrestHeight };
  const grounded: Issue[] = [];
  for (const [name, height] of Object.entries(heights)) {
    if (!Number.isFinite(height))
      throw new InvalidArgumentError(name, height, "a finite number of millimetres");
    if (height <= 0) {
      grounded.push(
        createIssue(landmarksIssues, "torso-height-not-positive", { path: [name], received: height }),
      );
    }
  }
  if (hasIssues(grounded)) return failure(grounded);
  if (cervicaleHeight <= iliacCrestHeight) {
    return failure([
      createIssue(landmarksIssues, "torso-heights-reversed", {
        path: ["cervicaleHeight"],
        received: cervicaleHeight,
        facts: { cervicaleHeightMm: cervicaleHeight, iliacCrestHeightMm: iliacCrestHeight },
      }),
    ]);
  }
  const torso = millimetres(cervicaleHeight - iliacCrestHeight);
  const note = createIssue(landmarksIssues, "torso-length-straight", {
    received: torso,
    facts: { torsoLengthMm: Math.round(torso * 10) / 10, curveSurplusMm: meanCurveSurplusMm },
  });
  return success(torso, [note]);
}
