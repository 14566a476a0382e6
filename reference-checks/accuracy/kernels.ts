import {
  lognormalDistribution,
  normalBoxProbability,
  owensT,
  skewNormalDistribution,
  truncatedNormal,
} from "@tapewise/population";
import {
  bivariateNormalBox,
  bivariateNormalCdf,
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  fCdf,
  fUpperTail,
  incompleteBeta,
  incompleteGamma,
  logGamma,
  normalCdf,
  normalIntervalProbability,
  normalPdf,
  normalQuantile,
  normalUpperTail,
  studentTCdf,
  studentTIntervalProbability,
  studentTPdf,
  studentTQuantile,
  studentTUpperTail,
} from "@tapewise/statistics";

type Numbers = readonly number[];
const open = Number.NEGATIVE_INFINITY;

const unitTruncated = (from = 0, to = 0) => truncatedNormal({ mean: 0, sd: 1, from, to });
const unitSkew = (shape = 0) => skewNormalDistribution({ location: 0, scale: 1, shape });

/** Each numeric kernel by the name that the points have for it. */
export const kernels: Readonly<Record<string, (args: Numbers) => number>> = {
  normalCdf: ([z = 0]) => normalCdf(z),
  normalUpperTail: ([z = 0]) => normalUpperTail(z),
  normalPdf: ([z = 0]) => normalPdf(z),
  normalQuantile: ([p = 0]) => normalQuantile(p),
  normalIntervalProbability: ([a = 0, b = 0]) => normalIntervalProbability(a, b),
  studentTCdf: ([t = 0, df = 1]) => studentTCdf(t, df),
  studentTUpperTail: ([t = 0, df = 1]) => studentTUpperTail(t, df),
  studentTPdf: ([t = 0, df = 1]) => studentTPdf(t, df),
  studentTQuantile: ([p = 0, df = 1]) => studentTQuantile(p, df),
  studentTIntervalProbability: ([a = 0, b = 0, df = 1]) => studentTIntervalProbability(a, b, df),
  chiSquareCdf: ([x = 0, df = 1]) => chiSquareCdf(x, df),
  chiSquareUpperTail: ([x = 0, df = 1]) => chiSquareUpperTail(x, df),
  chiSquareQuantile: ([p = 0, df = 1]) => chiSquareQuantile(p, df),
  fCdf: ([x = 0, a = 1, b = 1]) => fCdf(x, a, b),
  fUpperTail: ([x = 0, a = 1, b = 1]) => fUpperTail(x, a, b),
  incompleteBeta: ([x = 0, a = 1, b = 1]) => incompleteBeta(x, a, b),
  incompleteGamma: ([a = 1, x = 0]) => incompleteGamma(a, x),
  logGamma: ([x = 1]) => logGamma(x),
  owensT: ([h = 0, a = 0]) => owensT(h, a),
  bivariateNormalCdf: ([h = 0, k = 0, rho = 0]) => bivariateNormalCdf(h, k, rho),
  bivariateNormalBox: ([a = 0, b = 0, c = 0, d = 0, rho = 0]) => bivariateNormalBox(a, b, c, d, rho),
  normalBoxProbability: ([x = 0, y = 0, z = 0, a = 0, b = 0, c = 0]) =>
    normalBoxProbability(
      [open, open, open],
      [x, y, z],
      [
        [1, a, b],
        [a, 1, c],
        [b, c, 1],
      ],
    ).probability,
  "truncatedNormal.mean": ([from, to]) => unitTruncated(from, to).mean,
  "truncatedNormal.variance": ([from, to]) => unitTruncated(from, to).variance,
  "skewNormal.cumulative": ([z = 0, shape]) => unitSkew(shape).cumulative(z),
  "skewNormal.density": ([z = 0, shape]) => unitSkew(shape).density(z),
  "lognormal.quantile": ([p = 0, meanLog = 0, sdLog = 1]) =>
    lognormalDistribution({ meanLog, sdLog }).quantile(p),
  "lognormal.mean": ([meanLog = 0, sdLog = 1]) => lognormalDistribution({ meanLog, sdLog }).mean,
};
