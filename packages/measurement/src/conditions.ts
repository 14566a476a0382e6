import { type MeasuredBy, measurers, type Tool, tools } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";

/** A rule shorter than this would be all joints. Assumption. */
export const SHORTEST_RULE_MM = 10;

/** How readings were taken. What is left out is assumed, and the estimate says so. */
export interface Conditions {
  readonly tool?: Tool;
  readonly measuredBy?: MeasuredBy;
  /** Whether the bones were found anew before every reading, so that a slip in finding them averages out. */
  readonly landmarksFoundAfresh?: boolean;
  /** Length of the rule in mm, 10 or more, for the tool `short-rule`. */
  readonly ruleLengthMm?: number;
}

/** Conditions with nothing left out, and the names of those that had to be assumed. */
export interface KnownConditions extends Required<Conditions> {
  readonly assumed: readonly ("tool" | "measured-by" | "landmarks-found-afresh")[];
}

/** A condition that is none: which, what it is, and what it may be. */
export interface ConditionFault {
  readonly part: "conditions" | "tool" | "measuredBy" | "landmarksFoundAfresh" | "ruleLengthMm";
  readonly received: unknown;
  readonly choices: string;
}

/**
 * Fills in conditions that nobody stated: a tape, held by the person measured, bones found once. Each
 * of them is named in `assumed`. Finding the bones once is the careful guess, because a slip in it
 * then stays in every reading. The length of the rule is filled in too; it matters for `short-rule` only.
 *
 * @param ruleLengthMm - length in mm of a rule whose length is not stated
 * @throws {@link InvalidArgumentError} for a condition that is none, or a rule shorter than 10 mm.
 *
 * @example
 * ```ts
 * import { assumeConditions } from "@tapewise/measurement";
 * assumeConditions({ tool: "tape", measuredBy: "helper" }, 300).assumed; // => ["landmarks-found-afresh"]
 * ```
 */
export function assumeConditions(conditions: Conditions, ruleLengthMm: number): KnownConditions {
  const [fault] = [...findConditionFaults(conditions), ...findConditionFaults({ ruleLengthMm })];
  if (fault !== undefined) throw new InvalidArgumentError(fault.part, fault.received, fault.choices);
  const assumed: ("tool" | "measured-by" | "landmarks-found-afresh")[] = [];
  if (conditions.tool === undefined) assumed.push("tool");
  if (conditions.measuredBy === undefined) assumed.push("measured-by");
  if (conditions.landmarksFoundAfresh === undefined) assumed.push("landmarks-found-afresh");
  return { ...fillConditions(conditions, ruleLengthMm), assumed };
}

/** Fills in conditions that nobody stated, without a look at those that somebody did. */
export function fillConditions(conditions: Conditions, ruleLengthMm: number): Required<Conditions> {
  return {
    tool: conditions.tool ?? "tape",
    measuredBy: conditions.measuredBy ?? "self",
    landmarksFoundAfresh: conditions.landmarksFoundAfresh ?? false,
    ruleLengthMm: conditions.ruleLengthMm ?? ruleLengthMm,
  };
}

/** What is wrong with conditions, whatever they turn out to be. */
export function findConditionFaults(conditions: unknown): readonly ConditionFault[] {
  if (typeof conditions !== "object" || conditions === null || Array.isArray(conditions)) {
    return [{ part: "conditions", received: conditions, choices: "an object, such as { tool: “tape” }" }];
  }
  const stated: { readonly [part in keyof Conditions]?: unknown } = conditions;
  const { tool, measuredBy, landmarksFoundAfresh, ruleLengthMm } = stated;
  const faults: ConditionFault[] = [];
  if (tool !== undefined && !tools.some((known) => known === tool)) {
    faults.push({ part: "tool", received: tool, choices: "tape, cord-and-ruler or short-rule" });
  }
  if (measuredBy !== undefined && !measurers.some((known) => known === measuredBy)) {
    faults.push({ part: "measuredBy", received: measuredBy, choices: "self or helper" });
  }
  if (landmarksFoundAfresh !== undefined && typeof landmarksFoundAfresh !== "boolean") {
    faults.push({ part: "landmarksFoundAfresh", received: landmarksFoundAfresh, choices: "true or false" });
  }
  if (
    ruleLengthMm !== undefined &&
    !(Number.isFinite(ruleLengthMm) && Number(ruleLengthMm) >= SHORTEST_RULE_MM)
  ) {
    const choices = `a finite number of millimetres, ${SHORTEST_RULE_MM} or more`;
    faults.push({ part: "ruleLengthMm", received: ruleLengthMm, choices });
  }
  return faults;
}
