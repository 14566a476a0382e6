export { normalCdf } from "./normal-cdf.ts";
export { normalIntervalProbability } from "./normal-interval-probability.ts";
export { normalPdf } from "./normal-pdf.ts";
export { normalQuantile } from "./normal-quantile.ts";
export { normalUpperTail } from "./normal-upper-tail.ts";
