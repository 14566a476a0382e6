import { charts, fit, outcome } from "tapewise";
import { safeReadPerson } from "tapewise/batch";

/** A size for readings as somebody typed them in, or what is wrong with them. */
export function chooseSize(torso: readonly string[], hips: readonly string[], chart: string) {
  const person = safeReadPerson({
    tool: "tape",
    measuredBy: "self",
    readings: { "torso-length": torso, "hip-belt-girth": hips },
  });
  const pack = charts.safeParseChartCsv(chart, { chart: "Doily 45" });
  const issues = [...person.issues, ...pack.issues];
  // What can be read is kept, so `ok` alone does not say that all is well.
  const errors = issues.filter(({ severity }) => severity === "error");
  if (outcome.hasIssues(errors)) return outcome.failure(errors);
  if (!person.ok) return person;
  if (!pack.ok) return pack;

  const chosen = fit.recommend(person.value, pack.value, { unit: "cm" });
  if (!chosen.ok) return chosen;
  const { pick, verdict, probability, reasons, next } = chosen.value;
  const answer = {
    pick,
    verdict,
    chance: fit.writePercent(probability),
    why: reasons.map(({ sentence }) => sentence),
    next: next.map(({ code }) => code),
  };
  return outcome.success(answer, [...issues, ...chosen.issues]);
}
