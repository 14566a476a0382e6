import { type DimensionId, dimensionIds, tools } from "@tapewise/landmarks";
import { safeEstimate, safeReadReadings } from "@tapewise/measurement";
import { summariseIssue } from "../summarise-issue.ts";
import { cleanJson } from "./clean-json.ts";
import type { QuickEstimates } from "./quick-estimate.ts";
import { MOST_READINGS, type ScannedPerson } from "./scanned-person.ts";

/**
 * The estimate of readings that there is something to ask about, in the way of `safeEstimate`, with the questions as
 * they stand in a line; `undefined` where no estimate can be made.
 */
export function estimateInFull(
  person: ScannedPerson,
  place: number,
  into: QuickEstimates,
): Uint8Array | undefined {
  const dimension = dimensionIds[place] as DimensionId;
  const path = ["readings", dimension];
  const decoder = new TextDecoder();
  const texts = Array.from({ length: person.counts[place] as number }, (_, k) => {
    const at = place * MOST_READINGS + k;
    return decoder.decode(person.bytes.subarray(person.textFrom[at], person.textTo[at]));
  });
  const read = safeReadReadings(dimension, texts, { path });
  if (!read.ok) return undefined;
  const tool = tools[person.tool];
  const conditions = {
    ...(tool === undefined ? {} : { tool }),
    measuredBy: person.by === 1 ? ("helper" as const) : ("self" as const),
    ...(person.afresh === 0 ? {} : { landmarksFoundAfresh: person.afresh === 2 }),
  };
  const outcome = safeEstimate({ dimension, readings: read.value, path, conditions });
  if (!outcome.ok) return undefined;
  const { mm, uncertaintyMm, degreesOfFreedom, lastingMm, perReadingMm } = outcome.value;
  into.mean[place] = mm;
  into.uncertainty[place] = uncertaintyMm;
  into.degrees[place] = degreesOfFreedom;
  into.lasting[place] = lastingMm;
  into.perReading[place] = perReadingMm;
  const issues = [...read.issues, ...outcome.issues];
  return new TextEncoder().encode(issues.map((issue) => cleanJson(summariseIssue(issue))).join(","));
}
