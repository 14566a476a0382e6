// What a page works out: from a reading and a chart, as text, to a size.
import { charts, fit, measurement, units } from "tapewise";

/** The size that the crew's shelf has for a torso of 45 cm. */
export function choose(): string {
  const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Crew shelf" });
  const torso = measurement.parseEstimate({
    dimension: "torso-length",
    readings: [units.parseLength("45 cm")],
    error: { biasMm: 5, repeatMm: 0, resolutionMm: 0 },
  });
  const outcome = fit.recommend({ estimates: [torso] }, chart, { unit: "cm" });
  return outcome.ok ? `${outcome.value.pick} ${outcome.value.verdict}` : outcome.issues[0].message;
}
