import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { Study } from "../study/study.ts";
import { agreementIssues } from "./agreement-issues.ts";
import {
  type BlandAltman,
  type BlandAltmanOptions,
  blandAltman,
  requireConventions,
} from "./bland-altman.ts";
import { type BlandAltmanRepeats, blandAltmanRepeats } from "./bland-altman-repeats.ts";
import { compensatedMean } from "./compensated-sum.ts";
import type { DifferencePoint, RepeatedPair } from "./interval-estimate.ts";

/** Which two measurers to compare, and by which conventions. */
export interface MeasurerAgreementOptions extends BlandAltmanOptions {
  /** Names as in the study. Differences are first less second. */
  readonly first: string;
  readonly second: string;
}

/** How two measurers of a study agree, in mm. */
export interface MeasurerAgreement {
  readonly first: string;
  readonly second: string;
  /** For single readings. Without repeats all of {@link blandAltman}; with repeats from {@link blandAltmanRepeats}. */
  readonly limits: BlandAltman | BlandAltmanRepeats;
  /** For the plot: each subject's mean difference over its mean. */
  readonly points: readonly (DifferencePoint & { readonly subject: string })[];
}

/**
 * Bias and limits of agreement of two measurers of a study. Where one of them read a subject more than once, repeats
 * are modelled with a constant true value, and the limits are for single readings all the same; the `method` of the
 * intervals is then always that of {@link blandAltmanRepeats}.
 *
 * Issues: `agreement-measurer-unknown`, `agreement-subjects-few`, `agreement-no-scatter` (no value);
 * `agreement-subject-unpaired` (a subject is left out).
 *
 * @throws {@link InvalidArgumentError} when a convention is out of range.
 *
 * @example
 * ```ts
 * import { createStudy, safeMeasurerAgreement } from "@tapewise/measurement";
 * import { unwrap } from "@tapewise/outcome";
 * import { millimetres } from "@tapewise/units";
 * const readings = [[431, 428], [446, 447], [412, 408], [455, 453]].flatMap(([ann = 0, ben = 0], s) => [
 *   { subject: `s${s}`, measurer: "Ann", repeat: 1, mm: millimetres(ann) },
 *   { subject: `s${s}`, measurer: "Ben", repeat: 1, mm: millimetres(ben) },
 * ]);
 * const study = createStudy({ readings });
 * unwrap(safeMeasurerAgreement(study, { first: "Ann", second: "Ben" })).limits.bias.value; // => 2
 * ```
 */
export function safeMeasurerAgreement(
  study: Study,
  options: MeasurerAgreementOptions,
): Outcome<MeasurerAgreement> {
  requireConventions(options);
  const { first, second } = options;
  const unknown = [first, second].filter((name) => !study.measurers.includes(name));
  const faults = unknown.map((name) =>
    createIssue(agreementIssues, "agreement-measurer-unknown", {
      received: name,
      facts: { measurers: study.measurers.join(", ") },
    }),
  );
  if (hasIssues(faults)) return failure(faults);
  const warnings: Issue[] = [];
  const pairs: (RepeatedPair & { readonly subject: string })[] = [];
  for (const subject of study.subjects) {
    const by = (measurer: string): readonly number[] =>
      study.readings
        .filter((own) => own.subject === subject && own.measurer === measurer)
        .map(({ mm }) => mm);
    const pair = { subject, first: by(first), second: by(second) };
    if (pair.first.length > 0 && pair.second.length > 0) pairs.push(pair);
    else {
      warnings.push(
        createIssue(agreementIssues, "agreement-subject-unpaired", { facts: { subject, first, second } }),
      );
    }
  }
  if (pairs.length < 3) {
    const facts = { count: pairs.length, first, second };
    return failure([createIssue(agreementIssues, "agreement-subjects-few", { facts }), ...warnings]);
  }
  const points = pairs.map((pair) => {
    const [a, b] = [compensatedMean(pair.first), compensatedMean(pair.second)];
    return { subject: pair.subject, mean: (a + b) / 2, difference: a - b };
  });
  const repeated = pairs.some((pair) => pair.first.length > 1 || pair.second.length > 1);
  const differ = points.some(({ difference }) => difference !== points[0]?.difference);
  if (!differ && !(repeated && pairs.some(scatters))) {
    return failure([
      createIssue(agreementIssues, "agreement-no-scatter", { facts: { first, second } }),
      ...warnings,
    ]);
  }
  const limits = repeated
    ? blandAltmanRepeats(pairs, { ...options, trueValue: "constant" })
    : blandAltman(
        pairs.map((pair) => pair.first[0] ?? 0),
        pairs.map((pair) => pair.second[0] ?? 0),
        options,
      );
  return success({ first, second, limits, points }, warnings);
}

function scatters({ first, second }: RepeatedPair): boolean {
  return first.some((value) => value !== first[0]) || second.some((value) => value !== second[0]);
}
