import { type MeasuredBy, type Tool, tools } from "@tapewise/landmarks";
import type { KnownConditions } from "../conditions.ts";

/** A way to measure on: more of the same, bones found afresh, somebody else, another tool. */
export type NextWay = "repeat" | "landmarks-afresh" | "helper" | "other-tool";

/** A way with the conditions that it means. */
export interface NextConditions {
  readonly way: NextWay;
  readonly tool: Tool;
  readonly measuredBy: MeasuredBy;
  readonly landmarksFoundAfresh: boolean;
}

/** The ways that are open to somebody who has measured under these conditions. */
export function nextWays(now: KnownConditions): readonly NextConditions[] {
  const { tool, measuredBy, landmarksFoundAfresh } = now;
  const same = { tool, measuredBy, landmarksFoundAfresh };
  const ways: NextConditions[] = [{ way: "repeat", ...same }];
  if (!landmarksFoundAfresh) ways.push({ way: "landmarks-afresh", ...same, landmarksFoundAfresh: true });
  if (measuredBy === "self") ways.push({ way: "helper", ...same, measuredBy: "helper" });
  for (const other of tools) {
    if (other !== tool) ways.push({ way: "other-tool", ...same, tool: other });
  }
  return ways;
}
