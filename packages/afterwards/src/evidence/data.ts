// The figures behind what is learned from exchanges. Basis of every figure: assumption. Offsets of makers and
// products together have a standard deviation of 14 mm along the back, half the usual step between two sizes;
// widths one of 17 %. Nothing further off than some three of these is looked for.
import type { EvidenceModel } from "./evidence-model.ts";

/** The model used where the caller states none. */
export const evidenceDefaults: EvidenceModel = {
  backLength: {
    toleranceMm: 8,
    makerOffsetSdMm: 12,
    productOffsetSdMm: 7,
    makerLogWidthSd: 0.14,
    productLogWidthSd: 0.09,
    reachMm: 45,
    logReach: 0.5,
  },
  girth: {
    toleranceMm: 20,
    makerOffsetSdMm: 30,
    productOffsetSdMm: 18,
    makerLogWidthSd: 0.14,
    productLogWidthSd: 0.09,
    reachMm: 110,
    logReach: 0.5,
  },
  stature: {
    toleranceMm: 30,
    makerOffsetSdMm: 40,
    productOffsetSdMm: 23,
    makerLogWidthSd: 0.14,
    productLogWidthSd: 0.09,
    reachMm: 150,
    logReach: 0.5,
  },
  slipProbability: 0.02,
  asPrintedProbability: 0.5,
  sureProbability: 0.95,
};
