// What somebody writes who takes the whole library: from a reading to a size.
import { charts, fit, measurement, units } from "tapewise";

const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Crew shelf" });
const torso: measurement.Estimate = measurement.parseEstimate({
  dimension: "torso-length",
  readings: [units.parseLength("45 cm")],
  error: { biasMm: 5, repeatMm: 0, resolutionMm: 0 },
});
const outcome = fit.recommend({ estimates: [torso] }, chart, { unit: "cm" });

export const answer = outcome.ok
  ? { pick: outcome.value.pick, verdict: outcome.value.verdict, sure: outcome.value.probability > 0.999 }
  : outcome.issues;
