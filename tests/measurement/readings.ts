import type { Estimate, EstimateInput } from "@tapewise/measurement";
import { safeEstimate } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { type LengthReading, parseLength } from "@tapewise/units";

/** Readings as people write them, separated by commas. */
export function readingsOf(texts: string): readonly LengthReading[] {
  return texts.split(",").map((text) => parseLength(text.trim()));
}

/** The questions with one code that readings of a torso length, with the bones found once, give rise to. */
export function questionsOf(
  code: string,
  texts: string,
  input: Partial<EstimateInput> = {},
): readonly Issue[] {
  const outcome = safeEstimate({
    dimension: "torso-length",
    readings: readingsOf(texts),
    conditions: { landmarksFoundAfresh: false },
    ...input,
  });
  if (!outcome.ok) throw new Error("no estimate");
  return outcome.issues.filter((issue) => issue.code === code);
}

/** The line of an error budget. */
export function lineOf(estimate: Estimate, source: Estimate["budget"][number]["source"]) {
  const line = estimate.budget.find((one) => one.source === source);
  if (line === undefined) throw new Error(`no line for ${source}`);
  return line;
}
