import type { ChartDimension } from "@tapewise/charts";
import type { EvidenceModel, EvidenceScale } from "./evidence-model.ts";

/** The figures for one dimension: heights and breadths that no harness or belt is made to go by the stature's. */
export function scaleFor(model: EvidenceModel, dimension: ChartDimension): EvidenceScale {
  if (dimension === "torso-length" || dimension === "back-waist-length") return model.backLength;
  return dimension.endsWith("-girth") ? model.girth : model.stature;
}
