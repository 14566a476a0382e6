import { measurement, outcome } from "tapewise";

/** How far readings of one body differ, in mm with 95 % intervals: one measurer's, and anybody's. */
export function studyError(table: string) {
  const study = measurement.safeParseStudy(table, { dimension: "torso-length" });
  if (!study.ok) return study;
  const errors = measurement.safeTechnicalError(study.value);
  if (!errors.ok) return errors;
  const { intra, inter, total } = errors.value;
  const write = (tem: measurement.Tem | undefined) =>
    tem === undefined
      ? null
      : {
          mm: tem.mm.value.toFixed(2),
          interval: [tem.mm.lower.toFixed(2), tem.mm.upper.toFixed(2)],
          reliability: tem.reliability?.toFixed(3) ?? null,
        };
  const answer = {
    people: study.value.subjects.length,
    within: write(intra),
    between: write(inter),
    total: write(total),
  };
  return outcome.success(answer, [...study.issues, ...errors.issues]);
}
