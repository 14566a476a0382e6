import { subjectsForTem } from "../planning/subjects-for-tem.ts";
import type { StudyReport } from "../reliability/study-report.ts";
import type { Tem } from "../reliability/tem.ts";
import { requireUnit } from "./require-unit.ts";
import { prefersDigits } from "./tell-digits.ts";
import { hasTrend } from "./tell-trend.ts";
import type { StudyAdvice, ToldUnit } from "./told.ts";
import { counted, writeSmall } from "./write-figures.ts";

/** Beyond this many readings of one person by one measurer nobody goes on. Assumption. */
const MOST_REPEATS = 5;
/** An error known no better than to this part of itself is hardly known. Assumption. */
const ROUGH = 0.5;
/** How well to know it next time. Assumption. */
const WANTED = 0.25;

/**
 * What to do after a study, the most useful first: look at cells that stand apart, practise finding the bones, alone or
 * together, fetch a helper, read more often, ask more subjects. There is always something.
 *
 * What is larger decides: where the variance between measurers (sL²) is above that of a reading (sr²), more readings by
 * one hand help less than a second hand; otherwise more readings do, up to the number at which what lasts is the larger part.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { adviseStudy, parseStudy, summariseStudy } from "@tapewise/measurement";
 * const text = "subject,torso A1 (mm),torso B1 (mm)\nmia,430,438\nleo,480,486\nana,455,464\n";
 * adviseStudy(summariseStudy(parseStudy(text)), "cm").map(({ code }) => code);
 * // => ["read-again", "ask-more-measurers"]
 * ```
 */
export function adviseStudy(report: StudyReport, unit: ToldUnit): readonly StudyAdvice[] {
  requireUnit(unit);
  const advice = [
    ...adviseCells(report),
    ...adviseHands(report, unit),
    ...adviseHabits(report),
    ...adviseSize(report),
  ];
  if (advice.length > 0) return advice;
  return [
    {
      code: "keep-going",
      sentence: "Nothing stands out. Keep the way you measure, and repeat the study when somebody new joins.",
    },
  ];
}

function adviseCells({ precision }: StudyReport): readonly StudyAdvice[] {
  const found = [...(precision?.variances ?? []), ...(precision?.means ?? [])];
  if (found.length === 0) return [];
  const cells = [...new Set(found.map(({ subject, measurer }) => `${subject} by ${measurer}`))];
  return [
    {
      code: "look-at-outlying",
      sentence: `Look at the notes on ${cells.join(", ")}: if there was a slip, say so and take the reading again; leave out none for being odd.`,
    },
  ];
}

function adviseHands({ precision, technicalError }: StudyReport, unit: ToldUnit): readonly StudyAdvice[] {
  if (precision === undefined) {
    if (technicalError?.intra !== undefined) return [];
    const sentence =
      "Let every measurer read everybody twice, without a look at the first reading: only then errors of the hand and differences between measurers can be told apart.";
    return [{ code: "read-again", sentence }];
  }
  const sr = precision.repeatability.value;
  const sL = precision.betweenMm;
  const withN = (count: number): string =>
    `${writeSmall(Math.hypot(sL, sr / Math.sqrt(count)), unit)} ${unit}`;
  if (sL > sr) {
    return [
      {
        code: "practise-together",
        sentence: `Measurers differ from each other (sL) by more than one reading from the next (sr): practise finding the bones together until you put your finger on the same spot, then measure anew.`,
      },
      {
        code: "average-over-measurers",
        sentence: `Until then fetch a helper: the mean of readings by two measurers errs by ${writeSmall(Math.hypot(sL, sr) / Math.SQRT2, unit)} ${unit}, that of two by the same by ${withN(2)}.`,
      },
    ];
  }
  const enough = sL > 0 ? Math.ceil((sr / sL) ** 2) : MOST_REPEATS;
  const count = Math.max(2, Math.min(MOST_REPEATS, enough));
  return [
    {
      code: "practise-landmarks",
      sentence: `Most of the error changes from reading to reading: practise finding the bones, mark them afresh each time, and keep the tape where it lies when you read it.`,
    },
    {
      code: "average-repeats",
      sentence: `Take ${counted(count, "reading")} of a person and use their mean: it errs by ${withN(count)} where one reading errs by ${withN(1)}.`,
    },
  ];
}

function adviseHabits({ trend, digits }: StudyReport): readonly StudyAdvice[] {
  const advice: StudyAdvice[] = [];
  if (trend !== undefined && hasTrend(trend.all)) {
    const sentence =
      "Readings move with the repeats: rest between them, take the tape off, and let everybody stand up anew before each one.";
    advice.push({ code: "stop-the-trend", sentence });
  }
  if (digits?.all.some(prefersDigits) === true) {
    const sentence =
      "Read every mark: call the millimetres or the smallest fraction aloud, and let somebody else write it down.";
    advice.push({ code: "read-every-mark", sentence });
  }
  return advice;
}

function adviseSize({ technicalError, size }: StudyReport): readonly StudyAdvice[] {
  const isRough = (tem: Tem | undefined): boolean =>
    tem !== undefined && tem.mm.upper > (1 + ROUGH) * tem.mm.value;
  const { intra, inter, total } = technicalError ?? {};
  const advice: StudyAdvice[] = [];
  if (isRough(intra)) {
    const repeats = Math.max(2, size.repeats);
    const subjects = subjectsForTem({ repeats, precision: WANTED });
    advice.push({
      code: "ask-more-subjects",
      sentence: `The error of one measurer is known only roughly: ${counted(subjects, "subject")} with ${counted(repeats, "reading")} each would tell it to about a quarter of itself.`,
    });
  }
  if (isRough(total) || (intra === undefined && isRough(inter))) {
    advice.push({
      code: "ask-more-measurers",
      sentence: `How far measurers differ is known only roughly, for ${counted(size.measurers, "measurer")} ${size.measurers === 1 ? "is" : "are"} few: let others read the same people; more readings by the same ones help little.`,
    });
  }
  return advice;
}
