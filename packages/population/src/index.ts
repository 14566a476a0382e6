export { menReference, womenReference } from "./data.ts";
export type { ReferencePopulation } from "./reference-population.ts";
export { type ReferencePriorInput, referencePrior } from "./reference-prior.ts";
