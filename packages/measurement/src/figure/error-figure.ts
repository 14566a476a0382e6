import type { StudyComponents } from "../reliability/variance-components.ts";
import { requireUnit } from "../telling/require-unit.ts";
import type { ToldUnit } from "../telling/told.ts";
import { counted, wholePercent, writeSmall } from "../telling/write-figures.ts";
import type { ErrorFigure } from "./study-figure.ts";

/**
 * The data of a picture of where the error of a single reading comes from: bars for what differs between measurers,
 * for what differs between them from subject to subject, and for what changes from reading to reading. Draw it with
 * {@link drawStudyFigure}.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { errorFigure, parseStudy, safeVarianceComponents } from "@tapewise/measurement";
 * import { unwrap } from "@tapewise/outcome";
 * const study = parseStudy("subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n");
 * errorFigure(unwrap(safeVarianceComponents(study)), "cm").bars.map(({ label, share }) => [label, share]);
 * // => [["from reading to reading", 1]]
 * ```
 */
export function errorFigure(components: StudyComponents, unit: ToldUnit): ErrorFigure {
  requireUnit(unit);
  const { measurerVariance, interactionVariance, residualVariance } = components;
  const total = (measurerVariance ?? 0) + (interactionVariance ?? 0) + residualVariance;
  const bar = (name: string, variance: number | undefined): ErrorFigure["bars"] =>
    variance === undefined
      ? []
      : [{ label: name, sdMm: Math.sqrt(variance), share: total > 0 ? variance / total : 0 }];
  const bars = [
    ...bar("habits of measurers", measurerVariance),
    ...bar("habits with some subjects", interactionVariance),
    ...bar("from reading to reading", residualVariance),
  ];
  return {
    kind: "errors",
    text: {
      title: "Where the error of one reading comes from",
      description: `${bars.map(({ label, sdMm, share }) => `${label}: standard deviation ${writeSmall(sdMm, unit)} ${unit}, ${wholePercent(share)} of the variance`).join("; ")}.`,
      unit,
      sample: `${counted(components.subjects, "subject")}, ${counted(components.measurers, "measurer")}, ${counted(components.readings, "reading")}`,
      caveat:
        components.measurers < 2
          ? "Only one measurer: what others would read is not in it, nor what is wrong in all readings alike."
          : "What is wrong in the readings of all measurers alike does not show in any study of this kind.",
    },
    table: {
      header: ["", `standard deviation, ${unit}`, "share of variance"],
      rows: bars.map(({ label, sdMm, share }) => [label, writeSmall(sdMm, unit), wholePercent(share)]),
      wordColumns: 1,
    },
    bars,
  };
}
