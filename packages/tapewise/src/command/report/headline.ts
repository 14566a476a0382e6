import { type Recommendation, writePercent } from "@tapewise/fit";
import { probabilityWords } from "./probability-words.ts";

/** What the choice amounts to, in one or two sentences. */
export function headline(recommendation: Recommendation): string {
  const { pick, probability, outside, verdict } = recommendation;
  const chance = `${writePercent(probability)} (${probabilityWords(probability)})`;
  switch (verdict) {
    case "fits":
      return `Take ${pick}. It fits with ${chance}.`;
    case "two-sizes-fit":
      return `More than one size fits. Take ${pick}: it fits with ${chance}.`;
    case "between-sizes":
      return `No size is likely to fit: the body lies between sizes. The best is ${pick}, which fits with ${chance}.`;
    case "outside-the-range":
      return `Outside the range of this chart${endOf(outside)}. The nearest size is ${pick}, which fits with ${chance}.`;
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

function endOf(outside: Recommendation["outside"]): string {
  return outside === undefined
    ? ""
    : outside.end === "below"
      ? ", below its lower end"
      : ", above its upper end";
}
