import { failure, hasIssues, type Outcome, success } from "@tapewise/outcome";
import { checkPolicy } from "./check-policy.ts";
import { checkUnit } from "./check-unit.ts";
import { findRepeats } from "./find-repeats.ts";
import { formBeliefs } from "./form-beliefs.ts";
import type { Inquiry } from "./inquiry.ts";
import type { Person, RecommendOptions } from "./person.ts";
import { questionEstimates } from "./question-estimates.ts";

/** Puts together what is known of a person, once for all charts. The only code of failure: `estimate-repeated`. */
export function openInquiry(person: Person, options: RecommendOptions): Outcome<Inquiry> {
  const unit = checkUnit(options);
  const policy = checkPolicy(options.policy);
  const repeats = findRepeats(person);
  if (hasIssues(repeats)) return failure(repeats);
  const beliefs = formBeliefs(person.estimates, person.prior);
  const questions = questionEstimates(beliefs, person.prior, policy);
  return success({ person, beliefs, questions, policy, unit });
}
