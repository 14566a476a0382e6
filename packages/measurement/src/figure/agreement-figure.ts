import type { MeasurerAgreement } from "../reliability/bland-altman-of-study.ts";
import { requireUnit } from "../telling/require-unit.ts";
import type { ToldUnit } from "../telling/told.ts";
import { counted, writeSmall } from "../telling/write-figures.ts";
import type { AgreementFigure } from "./study-figure.ts";

/**
 * The data of a Bland and Altman plot of two measurers: each subject's difference over its mean, with the mean
 * difference and the limits of agreement. Draw it with {@link drawStudyFigure}.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { agreementFigure, parseStudy, safeMeasurerAgreement } from "@tapewise/measurement";
 * import { unwrap } from "@tapewise/outcome";
 * const study = parseStudy("subject,torso A1 (cm),torso B1 (cm)\nmia,43,43.4\nleo,48,48.2\nana,45,45\n");
 * const figure = agreementFigure(unwrap(safeMeasurerAgreement(study, { first: "A", second: "B" })), "cm");
 * figure.table.rows[0]; // => ["mia", "43.20", "-0.40"]
 * ```
 */
export function agreementFigure(agreement: MeasurerAgreement, unit: ToldUnit): AgreementFigure {
  requireUnit(unit);
  const { first, second, limits, points } = agreement;
  const { bias, lowerLimit, upperLimit, multiplier } = limits;
  const beyond = points.filter(
    ({ difference }) => difference < lowerLimit.value || difference > upperLimit.value,
  ).length;
  const repeats = !("method" in limits);
  return {
    kind: "agreement",
    text: {
      title: `${first} less ${second}: differences over means`,
      description: `${counted(points.length, "point")}, one for each subject. Mean difference ${writeSmall(bias.value, unit)} ${unit}, limits of agreement ${writeSmall(lowerLimit.value, unit)} to ${writeSmall(upperLimit.value, unit)} ${unit}; ${beyond === 0 ? "none" : beyond} of the points beyond them.`,
      unit,
      sample: `${counted(points.length, "subject")} read by ${first} and ${second}`,
      caveat: `Limits are ${multiplier} standard deviations from the mean difference and for single readings${repeats ? ", while points are differences of means, which scatter less" : ""}. Bands: what the size of the study leaves open.`,
    },
    table: {
      header: ["subject", `mean, ${unit}`, `difference, ${unit}`],
      rows: points.map(({ subject, mean, difference }) => [
        subject,
        writeSmall(mean, unit),
        writeSmall(difference, unit),
      ]),
      wordColumns: 1,
    },
    points: points.map(({ mean, difference }) => ({ mean, difference })),
    lines: [lowerLimit, bias, upperLimit],
  };
}
