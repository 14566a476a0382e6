import type { PersonCut } from "./person-line.ts";

/** The cuts that there are survey figures for. */
export const personCuts: readonly PersonCut[] = ["women", "men"];
