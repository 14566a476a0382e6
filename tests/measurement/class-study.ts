import { createStudy, type Study, type StudyReading } from "@tapewise/measurement";
import { millimetres } from "@tapewise/units";

/** A study from one list of readings in mm for each subject and measurer. */
export function studyOf(
  table: Readonly<Record<string, Readonly<Record<string, readonly number[]>>>>,
  dimension: Study["dimension"] = "torso-length",
): Study {
  const readings = Object.entries(table).flatMap(([subject, own]) =>
    Object.entries(own).flatMap(([measurer, lengths]) =>
      lengths.map(
        (mm, k): StudyReading => ({
          subject,
          measurer,
          repeat: k + 1,
          mm: millimetres(mm),
          unit: "cm",
          stepMm: millimetres(1),
        }),
      ),
    ),
  );
  return createStudy({ dimension, readings });
}

/** Four people, two measurers, two readings each: Ben reads 10 mm more than Ann. */
export const ANN_AND_BEN: Study = studyOf({
  mia: { Ann: [430, 434], Ben: [442, 442] },
  leo: { Ann: [480, 480], Ben: [489, 491] },
  ana: { Ann: [455, 451], Ben: [462, 464] },
  tom: { Ann: [410, 412], Ben: [420, 424] },
});
