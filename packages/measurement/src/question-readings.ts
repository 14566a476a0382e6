import { type DimensionId, dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue, type IssuePath } from "@tapewise/outcome";
import type { LengthReading } from "@tapewise/units";
import { questionApart } from "./questions/about-apart.ts";
import { questionAlike, questionDigits } from "./questions/about-digits.ts";
import { questionDrift } from "./questions/about-drift.ts";
import { questionScatter } from "./questions/about-scatter.ts";
import { questionMixedUnits, questionPlausibility } from "./questions/about-units.ts";
import type { QuestionContext } from "./questions/facts.ts";
import { readingIssues } from "./reading-issues.ts";
import { writtenStep } from "./written-step.ts";

/** Readings to be questioned. */
export interface QuestionedReadings {
  readonly dimension: DimensionId;
  readonly readings: readonly LengthReading[];
  readonly path: IssuePath;
  /** Standard deviation, in mm, by which readings of the method scatter before they are rounded. */
  readonly repeatMm: number;
  /** The same if what is not known of the conditions makes them scatter more. */
  readonly mostRepeatMm: number;
  /** The step in mm that somebody states the readings are rounded to. */
  readonly statedStepMm?: number;
}

/** What there is to ask about a set of readings, and the step that they turn out to be rounded to. */
export interface ReadingQuestions {
  readonly issues: readonly Issue[];
  readonly stepMm: number;
}

/** Asks every question about a set of readings. Nothing is changed or left out. */
export function questionReadings(asked: QuestionedReadings): ReadingQuestions {
  const { dimension, readings, path, repeatMm, mostRepeatMm } = asked;
  const writtenMm = writtenStep(readings);
  const digits = questionDigits({ dimension, readings, path, writtenMm });
  // Readings to whole inches differ by an inch or not at all: that is rounding and no slip.
  const stepMm = Math.max(digits.stepMm, asked.statedStepMm ?? 0);
  const usualMm = Math.sqrt(mostRepeatMm ** 2 + stepMm ** 2 / 12);
  const context: QuestionContext = { dimension, readings, path, repeatMm, usualMm, writtenMm, stepMm };

  const apart = questionApart(context);
  return {
    stepMm: digits.stepMm,
    issues: [
      ...questionMixedUnits(context),
      ...questionPlausibility(context),
      ...apart,
      // One reading apart is the better explanation of a wide scatter.
      ...(apart.length > 0 ? [] : questionScatter(context)),
      ...questionDrift(context),
      ...digits.issues,
      ...questionAlike(context),
      ...(readings.length === 1 ? [questionAlone(context)] : []),
    ],
  };
}

function questionAlone({ dimension, readings, path }: QuestionContext): Issue {
  return createIssue(readingIssues, "reading-alone", {
    path,
    received: readings[0]?.text,
    facts: { dimension: dimensionName(dimension) },
  });
}
