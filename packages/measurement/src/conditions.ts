import type { MeasuredBy, Tool } from "@tapewise/landmarks";

/** Every tool that a reading can be taken with. */
export const tools: readonly Tool[] = ["tape", "cord-and-ruler", "short-rule"];

/** Everybody who may hold it. */
export const measurers: readonly MeasuredBy[] = ["self", "helper"];

/** How readings were taken. What is left out is assumed, and the estimate says so. */
export interface Conditions {
  readonly tool?: Tool;
  readonly measuredBy?: MeasuredBy;
  /** Whether the bones were found anew before every reading, so that a slip in finding them averages out. */
  readonly landmarksFoundAfresh?: boolean;
  /** Length of the rule in mm, for the tool `short-rule`. */
  readonly ruleLengthMm?: number;
}

/** Conditions with nothing left out, and the names of those that had to be assumed. */
export interface KnownConditions {
  readonly tool: Tool;
  readonly measuredBy: MeasuredBy;
  readonly landmarksFoundAfresh: boolean;
  readonly ruleLengthMm: number;
  readonly assumed: readonly ("tool" | "measured-by" | "landmarks-found-afresh")[];
}

/**
 * Fills in conditions that nobody stated: a tape, held by the person measured, bones found once. Each
 * of them is named in `assumed`. Finding the bones once is the careful guess, because a slip in it
 * then stays in every reading.
 *
 * @example
 * ```ts
 * import { assumeConditions } from "@tapewise/measurement";
 * assumeConditions({ tool: "tape", measuredBy: "helper" }, 300).assumed; // => ["landmarks-found-afresh"]
 * ```
 */
export function assumeConditions(conditions: Conditions, ruleLengthMm: number): KnownConditions {
  const assumed: ("tool" | "measured-by" | "landmarks-found-afresh")[] = [];
  if (conditions.tool === undefined) assumed.push("tool");
  if (conditions.measuredBy === undefined) assumed.push("measured-by");
  if (conditions.landmarksFoundAfresh === undefined) assumed.push("landmarks-found-afresh");
  return {
    tool: conditions.tool ?? "tape",
    measuredBy: conditions.measuredBy ?? "self",
    landmarksFoundAfresh: conditions.landmarksFoundAfresh ?? false,
    ruleLengthMm: conditions.ruleLengthMm ?? ruleLengthMm,
    assumed,
  };
}
