import { speakDimension } from "@tapewise/charts";
import { defaultPolicy, type OutsideRange, type Recommendation, writePercent } from "@tapewise/fit";
import { chanceToFit } from "./chance.ts";
import { type Misfit, misfitOf } from "./misfit.ts";
import { probabilityWords } from "./probability-words.ts";

/** What the choice amounts to, in one or two sentences. */
export function headline(recommendation: Recommendation): string {
  const { pick, probability, verdict } = recommendation;
  const chance = chanceInWords(probability);
  switch (verdict) {
    case "fits":
      return `Take ${pick}. It has ${chance}.`;
    case "two-sizes-fit":
      return `More than one size fits. Take ${pick}: it has ${chance}.`;
    case "between-sizes":
    case "outside-the-range":
      return misfitHeadline(misfitOf(recommendation, defaultPolicy), recommendation);
    case "measure-again":
      return `Measure again before you decide. So far ${pick} is ahead, with ${chance}.`;
  }
}

/** The verdict in two or three words, for tables. */
export const VERDICT_WORDS: Readonly<Record<Recommendation["verdict"], string>> = {
  fits: "fits",
  "two-sizes-fit": "two sizes fit",
  "between-sizes": "between sizes",
  "outside-the-range": "outside",
  "measure-again": "measure again",
};

function misfitHeadline(misfit: Misfit, { pick, probability }: Recommendation): string {
  const best = `${pick}, with ${chanceInWords(probability)}`;
  const packFits = `The pack fits in ${pick} (${writePercent(probability)})`;
  switch (misfit.kind) {
    case "beyond":
      return `Outside the range of this chart: the ${lies(misfit.outside)} its ${endOf(misfit.outside)}. The nearest size is ${best}.`;
    case "disagree":
      return `No size suits both the ${misfit.dimensions.map(speakDimension).join(" and the ")}. The best is ${best}.`;
    case "toss-up":
      return `${pick} or ${misfit.other}, about equally likely (${writePercent(probability)} and ${writePercent(misfit.otherProbability)})${between(misfit.dimension)}.`;
    case "border":
      return `The ${speakDimension(misfit.dimension)} lies between ${pick} and ${misfit.other}. The better one is ${best}.`;
    case "unlikely":
      return `No size is likely to fit. The best is ${best}.`;
    case "belt-beyond":
      return `${packFits}, but the ${lies(misfit.outside)} all of its hip belts. The nearest is ${misfit.belt}, with ${chanceToFit(misfit.beltProbability)}.`;
    case "belt-toss-up":
      return `${packFits}; of its hip belts, ${misfit.belt} or ${misfit.other}, about equally likely (${writePercent(misfit.beltProbability)} and ${writePercent(misfit.otherProbability)}).`;
    case "belt-unlikely":
      return `${packFits}, but none of its hip belts does. The nearest is ${misfit.belt}, with ${chanceToFit(misfit.beltProbability)}.`;
  }
}

function chanceInWords(probability: number): string {
  return `${chanceToFit(probability)} (${probabilityWords(probability)})`;
}

function lies({ dimension, end }: OutsideRange): string {
  return `${speakDimension(dimension)} lies ${end}`;
}

function endOf({ end }: OutsideRange): string {
  return end === "below" ? "lower end" : "upper end";
}

function between(dimension: Parameters<typeof speakDimension>[0] | undefined): string {
  return dimension === undefined ? "" : `: the ${speakDimension(dimension)} lies between the two`;
}
