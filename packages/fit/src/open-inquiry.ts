import { speakDimension } from "@tapewise/charts";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { checkPolicy } from "./check-policy.ts";
import { checkUnit } from "./check-unit.ts";
import { choiceIssues } from "./choice-issues.ts";
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

function findRepeats({ estimates }: Person): readonly Issue[] {
  return estimates.flatMap(({ dimension }, index) => {
    const isFirst = estimates.findIndex((one) => one.dimension === dimension) === index;
    if (isFirst) return [];
    const facts = { dimension: speakDimension(dimension) };
    return [
      createIssue(choiceIssues, "estimate-repeated", {
        path: ["estimates", index],
        received: dimension,
        facts,
      }),
    ];
  });
}
