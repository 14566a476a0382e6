import type { DimensionId } from "@tapewise/landmarks";
import { plausibleLimits } from "@tapewise/landmarks";
import { safeEstimate } from "@tapewise/measurement";
import { parseLength } from "@tapewise/units";
import { summariseIssue } from "../summarise-issue.ts";
import { cleanJson } from "./clean-json.ts";

/** A reading that nobody writes, to find the place of one in the note. */
const MARK = "[reading]";

/** The note on a dimension that was read once, up to the text of the reading and from there on. */
export function aloneNotes(dimension: DimensionId): readonly [Uint8Array, Uint8Array] {
  const { from, to } = plausibleLimits(dimension, "adult");
  const reading = { ...parseLength(`${Math.round((from + to) / 2)} mm`), text: MARK };
  const { issues } = safeEstimate({ dimension, readings: [reading], path: ["readings", dimension] });
  const texts = issues
    .map((issue) => cleanJson(summariseIssue(issue)))
    .join(",")
    .split(MARK);
  const [before = "", after = ""] = texts;
  const encoder = new TextEncoder();
  return [encoder.encode(before), encoder.encode(after)];
}
