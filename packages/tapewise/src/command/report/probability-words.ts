/**
 * The calibrated words of climate assessments for a probability: Mastrandrea et al. (2010), Guidance
 * Note for Lead Authors of the IPCC Fifth Assessment Report on Consistent Treatment of Uncertainties,
 * Table 1 (from memory). Its words nest ("likely" is 66 to 100 %); the narrowest one is taken.
 */
const WORDS: readonly (readonly [least: number, words: string])[] = [
  [0.99, "virtually certain"],
  [0.9, "very likely"],
  [0.66, "likely"],
  [0.33, "about as likely as not"],
  [0.1, "unlikely"],
  [0.01, "very unlikely"],
  [0, "exceptionally unlikely"],
];

/** A probability from 0 to 1 in words. */
export function probabilityWords(probability: number): string {
  const found = WORDS.find(([least]) => probability >= least);
  return found === undefined ? "exceptionally unlikely" : found[1];
}
