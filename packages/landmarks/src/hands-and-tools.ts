/** What a length is read with. `short-rule` is a rule shorter than the length, laid end to end. */
export type Tool = "tape" | "cord-and-ruler" | "short-rule";

/** Who takes the reading: the person being measured, or a helper. */
export type MeasuredBy = "self" | "helper";

/** Every {@link Tool}. */
export const tools: readonly Tool[] = ["tape", "cord-and-ruler", "short-rule"];

/** Every {@link MeasuredBy}. */
export const measurers: readonly MeasuredBy[] = ["self", "helper"];
