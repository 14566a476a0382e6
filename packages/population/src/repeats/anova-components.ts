import type { VarianceComponents } from "./components.ts";

/** Variance components of people who were all read equally often, by one-way analysis of variance. */
export function anovaComponents(people: readonly (readonly number[])[]): VarianceComponents {
  const count = people.length;
  const each = people[0]?.length ?? 0;
  const means = people.map((readings) => readings.reduce((sum, reading) => sum + reading, 0) / each);
  const mean = means.reduce((sum, own) => sum + own, 0) / count;
  const between = (each * means.reduce((sum, own) => sum + (own - mean) ** 2, 0)) / (count - 1);
  const squares = people.reduce(
    (sum, readings, i) => sum + readings.reduce((own, reading) => own + (reading - (means[i] ?? 0)) ** 2, 0),
    0,
  );
  const freedom = count * (each - 1);
  const within = squares / freedom;
  const variance = Math.max((between - within) / each, 0);
  const varianceError = Math.sqrt((2 * between ** 2) / (count - 1) + (2 * within ** 2) / freedom) / each;
  const betweenSd = Math.sqrt(variance);
  return {
    method: "anova",
    people: count,
    readings: count * each,
    mean,
    meanError: Math.sqrt(between / (count * each)),
    betweenSd,
    ...(variance > 0 ? { betweenError: varianceError / (2 * betweenSd) } : {}),
    withinSd: Math.sqrt(within),
    withinError: Math.sqrt(within / (2 * freedom)),
    reliability: variance / (variance + within),
  };
}
