// The choice of a size put together from general-purpose libraries, as somebody would write it who has none for it: from
// the readings of a person to an object with the chances of all sizes and the likeliest. Expected misfits, priors, ties,
// verdicts, reasons and further readings are left out, so that there is less to do than for us.
import studentCdf from "@stdlib/stats-base-dists-t-cdf";
import jstat from "jstat";
import { erf, mean as meanOf, std } from "mathjs";
import { cumulativeStdNormalProbability, mean, sampleStandardDeviation } from "simple-statistics";

/** What a library brings for it. */
export interface Toolbox {
  readonly mean: (values: number[]) => number;
  readonly sd: (values: number[]) => number;
  readonly cdf: (t: number, degrees: number) => number;
}

/** Standard deviation in mm of what stays the same from reading to reading, and the degrees of freedom of that figure. */
export const LASTING_MM = 6;
export const LASTING_DEGREES = 12;

/** Toolboxes by their names. Not every library has Student's t. */
export const toolboxes: Readonly<Record<string, Toolbox>> = {
  "simple-statistics, with Student's t of @stdlib": { mean, sd: sampleStandardDeviation, cdf: studentCdf },
  "jstat, Student's t": {
    mean: (values) => jstat.mean(values),
    sd: (values) => jstat.stdev(values, true),
    cdf: (t, degrees) => jstat.studentt.cdf(t, degrees),
  },
  "mathjs, normal by its erf, for it has no Student's t": {
    mean: (values) => Number(meanOf(values)),
    sd: (values) => Number(std(values)),
    cdf: (t) => 0.5 * (1 + erf(t * Math.SQRT1_2)),
  },
  "simple-statistics alone, normal by its table of four decimals, for it has no Student's t": {
    mean,
    sd: sampleStandardDeviation,
    cdf: cumulativeStdNormalProbability,
  },
};

/** A size as an object. */
export interface ComposedSize {
  readonly name: string;
  readonly ranges: Readonly<Record<string, { readonly from: number; readonly to: number }>>;
}

/** Estimates the dimensions of a person from readings in mm, and picks the likeliest size. */
export function chooseComposed(
  readings: Readonly<Record<string, number[]>>,
  sizes: readonly ComposedSize[],
  { mean, sd, cdf }: Toolbox,
) {
  const estimates = Object.entries(readings).map(([dimension, values]) => {
    const own = values.length > 1 ? sd(values) ** 2 / values.length : 0;
    const lasting = LASTING_MM ** 2;
    const variance = own + lasting;
    // Welch & Satterthwaite
    const doubt = own ** 2 / Math.max(1, values.length - 1) + lasting ** 2 / LASTING_DEGREES;
    return {
      dimension,
      mm: mean(values),
      uncertaintyMm: Math.sqrt(variance),
      degrees: variance ** 2 / doubt,
    };
  });
  const judged = sizes.map(({ name, ranges }) => {
    let probability = 1;
    for (const { dimension, mm, uncertaintyMm, degrees } of estimates) {
      const range = ranges[dimension];
      if (range === undefined) continue;
      const upTo = cdf((range.to - mm) / uncertaintyMm, degrees);
      probability *= upTo - cdf((range.from - mm) / uncertaintyMm, degrees);
    }
    return { size: name, probability };
  });
  const best = judged.reduce((a, b) => (b.probability > a.probability ? b : a));
  return { estimates, pick: best.size, probability: best.probability, sizes: judged };
}
