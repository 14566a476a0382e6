// What somebody writes who answers lines of people inside a pipeline of their own.
import { charts } from "tapewise";
import { type BatchLine, chooseLine } from "tapewise/batch";

const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Crew shelf" });
const person = {
  id: "p1",
  readings: { "torso-length": ["45 cm"] },
  error: { biasMm: 5, repeatMm: 0, resolutionMm: 0 },
};
const line: BatchLine = chooseLine(JSON.stringify(person), [chart]);

export const answer = {
  id: line.id,
  picks: "choices" in line ? line.choices.map((choice) => choice.pick) : line.issues,
};
