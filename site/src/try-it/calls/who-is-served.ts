import { charts, coverage, outcome, population } from "tapewise";

/** Which part of women, or of men, a chart serves, by its torso lengths. */
export function whoIsServed(chart: string, people: "women" | "men") {
  const pack = charts.safeParseChartCsv(chart, { chart: "Doily 45" });
  if (!pack.ok) return pack;
  // A chart of which a part cannot be read would give an answer to another question.
  const errors = pack.issues.filter(({ severity }) => severity === "error");
  if (outcome.hasIssues(errors)) return outcome.failure(errors);
  const held = coverage.chartCoverage(pack.value, population.referencePopulation(people));
  if (!held.ok) return held;
  const { served, outside, sizes } = held.value;
  const percent = ({ share }: coverage.Share) => `${(100 * share).toFixed(1)} %`;
  const answer = {
    served: percent(served),
    beside: outside.map(({ dimension, below, above }) => ({
      dimension,
      below: percent(below),
      above: percent(above),
    })),
    sizes: sizes.map((each) => ({ size: each.size, fits: percent(each.served), only: percent(each.only) })),
  };
  return outcome.success(answer, [...pack.issues, ...held.issues]);
}
