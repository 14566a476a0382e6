import { InvalidArgumentError } from "@tapewise/outcome";
import type { EvidenceModel } from "./evidence-model.ts";

/** Refuses a model whose figures are no standard deviations, reaches or no probability. */
export function checkModel(model: EvidenceModel): void {
  const { slipProbability, asPrintedProbability, sureProbability, ...scales } = model;
  for (const [name, value] of Object.entries({ slipProbability, asPrintedProbability, sureProbability })) {
    if (!(value > 0 && value < 1))
      throw new InvalidArgumentError(`model.${name}`, value, "above 0 and below 1");
  }
  for (const [kind, scale] of Object.entries(scales)) {
    for (const [name, value] of Object.entries(scale)) {
      if (!(Number.isFinite(value) && value > 0)) {
        throw new InvalidArgumentError(`model.${kind}.${name}`, value, "a finite number above 0");
      }
    }
  }
}
