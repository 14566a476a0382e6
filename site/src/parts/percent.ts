import type { Lang } from "../layouts/languages.ts";

/** A probability as a percentage that does not claim too much: no 0 %, no 100 %. */
export function percentText(probability: number, lang: Lang): string {
  if (probability < 0.01) return lang === "de" ? "unter 1 %" : "<1 %";
  if (probability > 0.99) return lang === "de" ? "über 99 %" : ">99 %";
  return `${Math.round(probability * 100)} %`;
}
