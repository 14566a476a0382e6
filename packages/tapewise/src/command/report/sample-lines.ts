import { describeSample } from "@tapewise/coverage";
import type { SurveyedPeople } from "../surveyed-people.ts";
import { wrap } from "../text/wrap.ts";

/** Whom figures are of, where they come from and what they do not hold for. */
export function sampleLines({ population, survey }: SurveyedPeople): string[] {
  const { source, caveat } = population.about;
  const indent = { first: "  ", rest: "    " };
  return [
    "About the figures",
    ...wrap(`Sample: ${describeSample(population, survey.people)}.`, indent),
    ...wrap(`Source: ${source}.`, indent),
    ...wrap(`Caveat: ${caveat}`, indent),
  ];
}

/** The same for programs. */
export function sampleData({ population, survey }: SurveyedPeople): {
  readonly sample: string;
  readonly source: string;
  readonly caveat: string;
} {
  const { source, caveat } = population.about;
  return { sample: describeSample(population, survey.people), source, caveat };
}
