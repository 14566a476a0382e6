// The figures behind what is learned from exchanges. Basis of every figure: assumption. Offsets of makers and
// products together have a standard deviation of 20 mm along the back, two thirds of the usual step between two sizes:
// wide enough that with few outcomes an interval leans little towards 0, and still holds a true offset of that size about
// as often as it says. Widths have one of 17 %. Nothing is looked for further off than some 2.3 and 3 of these.
import type { EvidenceModel } from "./evidence-model.ts";

/** The model used where the caller states none. */
export const evidenceDefaults: EvidenceModel = {
  backLength: {
    toleranceMm: 8,
    makerOffsetSdMm: 17,
    productOffsetSdMm: 10,
    makerLogWidthSd: 0.14,
    productLogWidthSd: 0.09,
    reachMm: 45,
    logReach: 0.5,
  },
  girth: {
    toleranceMm: 20,
    makerOffsetSdMm: 42,
    productOffsetSdMm: 25,
    makerLogWidthSd: 0.14,
    productLogWidthSd: 0.09,
    reachMm: 110,
    logReach: 0.5,
  },
  stature: {
    toleranceMm: 30,
    makerOffsetSdMm: 57,
    productOffsetSdMm: 33,
    makerLogWidthSd: 0.14,
    productLogWidthSd: 0.09,
    reachMm: 150,
    logReach: 0.5,
  },
  slipProbability: 0.02,
  asPrintedProbability: 0.5,
  sureProbability: 0.95,
};
