import { speakDimension } from "@tapewise/charts";
import { describeSample } from "@tapewise/coverage";
import type { SurveyedPeople } from "../surveyed-people.ts";
import { wrap } from "../text/wrap.ts";

/** Whom figures are of, where they come from, what curve they follow and what they do not hold for. */
export function sampleLines(people: SurveyedPeople): string[] {
  const { sample, source, caveat, model } = sampleData(people);
  return ["About the figures", ...note(`Sample: ${sample}.`), ...note(`Source: ${source}.`)].concat(
    note(`Model: ${model}.`),
    note(`Caveat: ${caveat}`),
  );
}

/** The same for programs. */
export function sampleData({ population, survey, lognormal }: SurveyedPeople): {
  readonly sample: string;
  readonly source: string;
  readonly model: string;
  readonly caveat: string;
} {
  const { source, caveat } = population.about;
  const girths = lognormal.map((girth) => (girth === "mass-kg" ? "body mass" : speakDimension(girth)));
  const model =
    girths.length === 0 ? "joint normal" : `joint normal, with the logarithm of the ${girths.join(" and ")}`;
  return { sample: describeSample(population, survey.people), source, model, caveat };
}

/** One note, with its further lines set in. */
export function note(text: string): string[] {
  return wrap(text, { first: "  ", rest: "    " });
}
