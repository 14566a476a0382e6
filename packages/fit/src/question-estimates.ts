import type { Prior } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import type { Beliefs } from "./belief.ts";
import type { FitPolicy } from "./policy.ts";
import { questionByLimits } from "./question-by-limits.ts";
import { questionByPrior } from "./question-by-prior.ts";

/** At most one doubt about each estimate: the prior knows more of this person than the limits of all people. */
export function questionEstimates(
  beliefs: Beliefs,
  prior: Prior | undefined,
  policy: FitPolicy,
): readonly Issue[] {
  const byPrior = questionByPrior(beliefs, prior, policy);
  const isAsked = (issue: Issue) => byPrior.some((one) => one.path.at(-1) === issue.path.at(-1));
  return [...byPrior, ...questionByLimits(beliefs).filter((issue) => !isAsked(issue))];
}
