import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { Study } from "../study/study.ts";
import { twoWayAnova } from "./anova-two-way.ts";
import { compensatedMean } from "./compensated-sum.ts";
import { componentIssues } from "./component-issues.ts";
import { hasScatter, type IccAnalysis, type IccOptions, intraclassCorrelations } from "./icc.ts";

/** The intraclass correlations of a study, and what they are of. */
export interface StudyIcc extends IccAnalysis {
  /** Readings of each cell that were averaged first: the correlations are of means of so many readings. */
  readonly averagedRepeats: number;
}

/**
 * Intraclass correlations of a complete study by {@link intraclassCorrelations}. Where measurers read more than
 * once, their readings are averaged first, so that "single" means the mean of one measurer's readings: for the
 * correlation of single readings, and for studies with empty cells or unequal repeats, take
 * {@link safeComponentIcc}, which models repeats.
 *
 * Issues: `icc-study-small`, `icc-study-incomplete`, `icc-subjects-alike`.
 *
 * @throws {@link InvalidArgumentError} when an option is out of range.
 *
 * @example
 * ```ts
 * import { createStudy, safeStudyIcc } from "@tapewise/measurement";
 * import { unwrap } from "@tapewise/outcome";
 * import { millimetres } from "@tapewise/units";
 * const readings = [[430, 434], [446, 452], [410, 415]].flatMap((row, s) =>
 *   row.map((mm, m) => ({ subject: `s${s}`, measurer: `m${m}`, repeat: 1, mm: millimetres(mm) })),
 * );
 * const { icc, averagedRepeats } = unwrap(safeStudyIcc(createStudy({ readings })));
 * icc["2,1"].value.toFixed(3); // => "0.963"
 * averagedRepeats; // => 1
 * ```
 */
export function safeStudyIcc(study: Study, options: IccOptions = {}): Outcome<StudyIcc> {
  const byCell = new Map<string, Map<string, number[]>>();
  for (const { subject, measurer, mm } of study.readings) {
    const row = byCell.get(subject) ?? new Map<string, number[]>();
    row.set(measurer, [...(row.get(measurer) ?? []), mm]);
    byCell.set(subject, row);
  }
  const cells = study.subjects.map((subject) =>
    study.measurers.map((measurer) => byCell.get(subject)?.get(measurer) ?? []),
  );
  const faults = findFaults(study, cells);
  if (hasIssues(faults)) return failure(faults);
  const table = cells.map((row) => row.map(compensatedMean));
  if (!hasScatter(twoWayAnova(table))) {
    return failure([createIssue(componentIssues, "icc-subjects-alike", { facts: {} })]);
  }
  return success({ ...intraclassCorrelations(table, options), averagedRepeats: study.repeats });
}

function findFaults(study: Study, cells: readonly (readonly (readonly number[])[])[]): readonly Issue[] {
  if (study.subjects.length < 2 || study.measurers.length < 2) {
    return [
      createIssue(componentIssues, "icc-study-small", {
        facts: { subjects: study.subjects.length, measurers: study.measurers.length },
      }),
    ];
  }
  const short = cells.flatMap((row, s) =>
    row.flatMap((readings, m) =>
      readings.length === study.repeats
        ? []
        : [{ subject: study.subjects[s] ?? "", measurer: study.measurers[m] ?? "", count: readings.length }],
    ),
  );
  const [first] = short;
  if (first === undefined) return [];
  return [
    createIssue(componentIssues, "icc-study-incomplete", {
      received: first.count,
      facts: { ...first, cells: short.length, repeats: study.repeats },
    }),
  ];
}
