import type { MeasuredBy, Tool } from "@tapewise/landmarks";
import type { PersonCut } from "./person-line.ts";

/** What a reading can be taken with. */
export const tools: readonly Tool[] = ["tape", "cord-and-ruler", "short-rule"];

/** Who may hold it. */
export const measurers: readonly MeasuredBy[] = ["self", "helper"];

/** The cuts that there are survey figures for. */
export const personCuts: readonly PersonCut[] = ["women", "men"];
