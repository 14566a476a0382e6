import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite } from "../require-argument.ts";
import { anovaComponents } from "./anova-components.ts";
import type { ComponentsOptions, VarianceComponents } from "./components.ts";
import { likelihoodComponents } from "./likelihood-components.ts";

/**
 * Parts the spread of repeated readings into that between people and that within a person.
 *
 * Model: reading = mean + person + error, both normal, errors of one person independent. Equally many readings
 * each: analysis of variance, σ²b = (MSB − MSW) / k, with the standard errors of mean squares (S. R. Searle,
 * G. Casella & C. E. McCulloch, 1992, Variance Components, 3.5). Otherwise: maximum likelihood, with
 * standard errors from the observed information; its σb divides by the number of people and is a little small for
 * few. An error that all readings of a person share (the same landmark mark, the same tape) cannot be seen and
 * stays in σb.
 *
 * @throws {@link InvalidArgumentError} when there are fewer than three people, nobody was read twice, a reading
 * is not finite, all readings are the same, or `anova` is asked for and people were read unequally often.
 *
 * @example
 * ```ts
 * import { varianceComponents } from "@tapewise/population";
 * const parts = varianceComponents([[400, 404], [420, 416], [440, 440]]);
 * parts.withinSd.toFixed(3); // => "2.309"
 * parts.betweenSd.toFixed(3); // => "19.009"
 * ```
 */
export function varianceComponents(
  people: readonly (readonly number[])[],
  options: ComponentsOptions = {},
): VarianceComponents {
  requireReadings(people);
  const [first] = people;
  const balanced = people.every((readings) => readings.length === first?.length);
  const method = options.method ?? (balanced ? "anova" : "maximum-likelihood");
  if (method === "maximum-likelihood") return likelihoodComponents(people);
  if (method !== "anova") throw new InvalidArgumentError("method", method, "anova or maximum-likelihood");
  if (!balanced) throw new InvalidArgumentError("method", method, "maximum-likelihood for unequal readings");
  return anovaComponents(people);
}

function requireReadings(people: readonly (readonly number[])[]): void {
  if (!(Array.isArray(people) && people.length >= 3)) {
    throw new InvalidArgumentError("people", people, "readings of at least three people");
  }
  for (const [i, readings] of people.entries()) {
    if (readings.length === 0)
      throw new InvalidArgumentError(`people[${i}]`, readings, "at least one reading");
    for (const [j, reading] of readings.entries()) requireFinite(`people[${i}][${j}]`, reading);
  }
  if (!people.some((readings) => readings.length > 1)) {
    throw new InvalidArgumentError("people", people, "at least one person who was read twice");
  }
  const [start] = people[0] ?? [];
  if (people.flat().every((reading) => reading === start)) {
    throw new InvalidArgumentError("people", people, "readings that differ");
  }
}
