import { dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { readingIssues } from "../reading-issues.ts";
import { type QuestionContext, textOf } from "./facts.ts";

/** Steps that people round to by habit, the coarsest first: mm, and how they are called. */
const HABITS: readonly { readonly stepMm: number; readonly name: string }[] = [
  { stepMm: 25.4, name: "1 in" },
  { stepMm: 12.7, name: "1/2 in" },
  { stepMm: 10, name: "1 cm" },
  { stepMm: 6.35, name: "1/4 in" },
  { stepMm: 5, name: "0.5 cm" },
];
/** A habit is named when readings without it would look like this in less than 1 of 100 cases. */
const SIGNIFICANCE = 0.01;

/** What the last digits of readings say. */
export interface DigitFinding {
  /** The step in mm that the readings really seem to be rounded to. */
  readonly stepMm: number;
  readonly issues: readonly Issue[];
}

/**
 * Digit preference: readings that are all multiples of a coarser step than they are written to. By
 * chance each is one with probability written step / coarse step.
 */
export function questionDigits(
  context: Pick<QuestionContext, "dimension" | "readings" | "path" | "writtenMm">,
): DigitFinding {
  const { readings, dimension, path, writtenMm } = context;
  const none: DigitFinding = { stepMm: writtenMm, issues: [] };
  if (readings.length < 2 || writtenMm === 0) return none;
  const distinct = new Set(readings.map((reading) => reading.mm));
  for (const habit of HABITS) {
    const ratio = writtenMm / habit.stepMm;
    // Readings that are alike for another reason are no evidence of a habit: each value counts once.
    if (ratio ** distinct.size >= SIGNIFICANCE) continue;
    if (!readings.every((reading) => isMultiple(reading.mm, habit.stepMm))) continue;
    const issue = createIssue(readingIssues, "readings-rounded", {
      path,
      received: textOf(readings),
      facts: {
        dimension: dimensionName(dimension),
        count: readings.length,
        coarse: habit.name,
        coarseMm: habit.stepMm,
        fine: `${Number(writtenMm.toPrecision(4))} mm`,
      },
    });
    return { stepMm: habit.stepMm, issues: [issue] };
  }
  return none;
}

function isMultiple(lengthMm: number, stepMm: number): boolean {
  const count = lengthMm / stepMm;
  return Math.abs(count - Math.round(count)) < 1e-9 * Math.max(1, count);
}

/**
 * Readings that agree to the last mark although the method scatters: the chance that normal readings
 * all fall on one mark is about n^(−1/2) (q / (σ√(2π)))^(n−1), with step q and scatter σ.
 */
export function questionAlike(context: QuestionContext): readonly Issue[] {
  const { readings, dimension, path, repeatMm, writtenMm } = context;
  const count = readings.length;
  if (count < 3 || repeatMm === 0 || new Set(readings.map((reading) => reading.mm)).size > 1) return [];
  const oneMark = Math.min(1, writtenMm / (repeatMm * Math.sqrt(2 * Math.PI)));
  const chance = oneMark ** (count - 1) / Math.sqrt(count);
  if (chance >= SIGNIFICANCE) return [];
  return [
    createIssue(readingIssues, "readings-too-alike", {
      path,
      received: readings[0]?.text,
      facts: { dimension: dimensionName(dimension), count },
    }),
  ];
}
