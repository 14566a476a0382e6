import { fQuantile } from "@tapewise/statistics";
import type { IccForm } from "./icc-form.ts";

/** Mean squares of a table of n subjects by k measurers: between subjects, within, between measurers, residual. */
export interface IccMeanSquares {
  readonly n: number;
  readonly k: number;
  readonly b: number;
  readonly w: number;
  readonly j: number;
  readonly e: number;
}

type Bounds = readonly [lower: number, upper: number];

/** Confidence intervals of McGraw & Wong (1996), Table 7, for the six forms. */
export function iccIntervals(squares: IccMeanSquares, confidence: number): Readonly<Record<IccForm, Bounds>> {
  const { n, k, b, w, e } = squares;
  const share = (1 + confidence) / 2;
  const oneWay = ratioBounds(b, w, n - 1, n * (k - 1), k, share);
  const consistency = ratioBounds(b, e, n - 1, (n - 1) * (k - 1), k, share);
  const agreement = agreementBounds(squares, share);
  const stepUp = ([lower, upper]: Bounds): Bounds => [meanOf(lower, k), meanOf(upper, k)];
  return {
    "1,1": oneWay,
    "2,1": agreement,
    "3,1": consistency,
    "1,k": stepUp(oneWay),
    "2,k": stepUp(agreement),
    "3,k": stepUp(consistency),
  };
}

/** (F − 1) / (F + k − 1) at the bounds of the ratio F of two mean squares. Divided through, so that none overflows. */
function ratioBounds(b: number, e: number, df1: number, df2: number, k: number, share: number): Bounds {
  const at = (between: number): number => (between - e) / (between + (k - 1) * e);
  return [at(b / fQuantile(share, df1, df2)), at(b * fQuantile(share, df2, df1))];
}

/** Absolute agreement, single reading: the variance of the denominator by Satterthwaite's approximation. */
function agreementBounds({ n, k, b, j, e }: IccMeanSquares, share: number): Bounds {
  const rho = (b - e) / (b + (k - 1) * e + (k * (j - e)) / n);
  const ofMeasurers = k * rho * j;
  const ofResidual = (n * (1 - rho) + k * rho * (n - 1)) * e;
  const squares = ofMeasurers ** 2 / (k - 1) + ofResidual ** 2 / ((n - 1) * (k - 1));
  // Of parts with the same sign never below k − 1; those of a negative correlation may cancel.
  const freedom = squares > 0 ? Math.max((ofMeasurers + ofResidual) ** 2 / squares, k - 1) : k - 1;
  const noise = k * j + (k * n - k - n) * e;
  const at = (between: number): number => (n * (between - e)) / (noise + n * between);
  return [at(b / fQuantile(share, n - 1, freedom)), at(b * fQuantile(share, freedom, n - 1))];
}

/**
 * The correlation of means of k readings from that of single ones (Spearman & Brown). It falls without end as that
 * comes down to −1/(k − 1); beyond, the formula would begin again from above 1.
 */
function meanOf(single: number, k: number): number {
  const rest = 1 + (k - 1) * single;
  return rest > 0 ? (k * single) / rest : Number.NEGATIVE_INFINITY;
}
