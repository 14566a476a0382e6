import { measurement, outcome } from "tapewise";

/** What readings of a torso say together, each with the bones found anew. Lengths in mm. */
export function averageReadings(texts: readonly string[], measuredBy: "self" | "helper") {
  const read = measurement.safeReadReadings("torso-length", texts);
  if (!read.ok) return read;
  // What can be read is kept; here nothing is said before all of it can.
  if (outcome.hasIssues(read.issues)) return outcome.failure(read.issues);
  const estimated = measurement.safeEstimate({
    dimension: "torso-length",
    readings: read.value,
    conditions: { tool: "tape", measuredBy, landmarksFoundAfresh: true },
  });
  if (!estimated.ok) return estimated;
  const { mm, uncertaintyMm, perReadingMm, lastingMm, coverage } = estimated.value;
  const answer = {
    mean: mm.toFixed(1),
    uncertainty: uncertaintyMm.toFixed(1),
    perReading: perReadingMm.toFixed(1),
    lasting: lastingMm.toFixed(1),
    interval: [coverage.lowerMm.toFixed(1), coverage.upperMm.toFixed(1)],
  };
  return outcome.success(answer, estimated.issues);
}
