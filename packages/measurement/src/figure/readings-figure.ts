import { dimensionName } from "@tapewise/landmarks";
import type { Study } from "../study/study.ts";
import { requireUnit } from "../telling/require-unit.ts";
import type { ToldUnit } from "../telling/told.ts";
import { counted, fixed, millimetresIn, writeSmall } from "../telling/write-figures.ts";
import type { ReadingsFigure } from "./study-figure.ts";

/**
 * The data of a picture of all readings of a study, a row for each subject, the shortest first. Draw it with
 * {@link drawStudyFigure}.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { parseStudy, readingsFigure } from "@tapewise/measurement";
 * const figure = readingsFigure(parseStudy("subject,torso A1 (cm),torso A2 (cm)\nleo,48,48.2\nmia,43,43.4\n"), "cm");
 * figure.rows.map(({ subject }) => subject); // => ["mia", "leo"]
 * figure.table.rows[0]; // => ["mia", "43.0, 43.4", "43.20"]
 * ```
 */
export function readingsFigure(study: Study, unit: ToldUnit): ReadingsFigure {
  requireUnit(unit);
  const { measurers, subjects } = study;
  const rows = subjects
    .map((subject) => {
      const own = study.readings.filter((reading) => reading.subject === subject);
      const meanMm = own.reduce((sum, { mm }) => sum + mm, 0) / own.length;
      return { subject, own, meanMm };
    })
    .filter(({ own }) => own.length > 0)
    .sort((one, other) => one.meanMm - other.meanMm);
  const spreads = rows.map(({ own }) => {
    const lengths = own.map(({ mm }) => mm);
    return Math.max(...lengths) - Math.min(...lengths);
  });
  const widest = Math.max(...spreads);
  const widestOf = rows[spreads.indexOf(widest)]?.subject ?? "";
  const inUnit = (mm: number): string => fixed(mm / millimetresIn(unit), unit === "cm" ? 1 : 2);
  const what =
    study.dimension === undefined ? "Readings" : `Readings of the ${dimensionName(study.dimension)}`;
  const left = study.missing.length + study.setAside.length;
  return {
    kind: "readings",
    text: {
      title: `${what} by subject`,
      description: `${counted(rows.length, "row")} of marks, one for each subject, from ${inUnit(rows[0]?.meanMm ?? 0)} to ${inUnit(rows.at(-1)?.meanMm ?? 0)} ${unit} on average. The readings of ${widestOf} lie farthest apart, by ${writeSmall(widest, unit)} ${unit}.`,
      unit,
      sample: describeStudy(study),
      caveat:
        left === 0
          ? "Every cell has a reading; marks may lie over each other."
          : `${counted(left, "cell")} without a reading or with one set aside ${left === 1 ? "is" : "are"} not drawn; marks may lie over each other.`,
    },
    table: {
      header: ["subject", ...measurers, `mean, ${unit}`],
      rows: rows.map(({ subject, own, meanMm }) => [
        subject,
        ...measurers.map((measurer) => {
          const lengths = own.filter((reading) => reading.measurer === measurer);
          return lengths.length === 0 ? "-" : lengths.map(({ mm }) => inUnit(mm)).join(", ");
        }),
        writeSmall(meanMm, unit),
      ]),
      wordColumns: 1,
    },
    measurers,
    rows: rows.map(({ subject, own }) => ({
      subject,
      readings: own.map(({ measurer, mm }) => ({ measurer: measurers.indexOf(measurer), mm })),
    })),
  };
}

/** Who was measured, by whom and how often. */
function describeStudy({ subjects, measurers, readings }: Study): string {
  return `${counted(subjects.length, "subject")}, ${counted(measurers.length, "measurer")}, ${counted(readings.length, "reading")}`;
}
