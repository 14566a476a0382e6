import type { MeasurerAgreement } from "../reliability/bland-altman-of-study.ts";
import type { StudyReport } from "../reliability/study-report.ts";
import type { Study } from "../study/study.ts";
import type { ToldUnit } from "../telling/told.ts";
import { agreementFigure } from "./agreement-figure.ts";
import { errorFigure } from "./error-figure.ts";
import { readingsFigure } from "./readings-figure.ts";
import type { StudyFigure } from "./study-figure.ts";

/** More plots of pairs than this bury the others. */
const MOST_PAIRS = 6;

/**
 * The pictures that go with a report: all readings by subject, a Bland and Altman plot for each pair of measurers (of
 * many pairs, for the six that agree least), and where the error comes from. Those that the study has no figures for
 * are absent.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { parseStudy, studyFigures, summariseStudy } from "@tapewise/measurement";
 * const study = parseStudy("subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n");
 * studyFigures(study, summariseStudy(study), "cm").map(({ kind }) => kind); // => ["readings", "errors"]
 * ```
 */
export function studyFigures(study: Study, report: StudyReport, unit: ToldUnit): readonly StudyFigure[] {
  const pairs =
    report.agreement.length <= MOST_PAIRS
      ? report.agreement
      : report.agreement.toSorted((one, other) => reachOf(other) - reachOf(one)).slice(0, MOST_PAIRS);
  return [
    readingsFigure(study, unit),
    ...pairs.map((pair) => agreementFigure(pair, unit)),
    ...(report.correlation === undefined ? [] : [errorFigure(report.correlation.components, unit)]),
  ];
}

function reachOf({ limits }: MeasurerAgreement): number {
  return Math.max(Math.abs(limits.lowerLimit.value), Math.abs(limits.upperLimit.value));
}
