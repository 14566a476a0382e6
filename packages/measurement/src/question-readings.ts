import { dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { measurementIssues } from "./issues.ts";
import { questionApart } from "./questions/about-apart.ts";
import { questionAlike, questionDigits } from "./questions/about-digits.ts";
import { questionDrift } from "./questions/about-drift.ts";
import { questionScatter } from "./questions/about-scatter.ts";
import { questionMixedUnits, questionPlausibility } from "./questions/about-units.ts";
import type { QuestionContext } from "./questions/facts.ts";

/** What there is to ask about a set of readings, and the step that they turn out to be rounded to. */
export interface ReadingQuestions {
  readonly issues: readonly Issue[];
  readonly stepMm: number;
}

/** Asks every question about a set of readings. Nothing is changed or left out. */
export function questionReadings(context: QuestionContext): ReadingQuestions {
  const implausible = questionPlausibility(context);
  const apart = questionApart(context);
  const digits = questionDigits(context);
  const alone =
    context.readings.length === 1
      ? [
          createIssue(measurementIssues, "reading-alone", {
            path: context.path,
            received: context.readings[0]?.text,
            facts: { dimension: dimensionName(context.dimension) },
          }),
        ]
      : [];
  return {
    stepMm: digits.stepMm,
    issues: [
      ...questionMixedUnits(context),
      ...implausible,
      ...apart,
      // One reading apart is the better explanation of a wide scatter.
      ...(apart.length > 0 ? [] : questionScatter(context)),
      ...questionDrift(context),
      ...digits.issues,
      ...questionAlike(context),
      ...alone,
    ],
  };
}
