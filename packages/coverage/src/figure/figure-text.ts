import { InvalidArgumentError } from "@tapewise/outcome";
import type { About, JointModel } from "@tapewise/population";
import { isMixture } from "../resample.ts";

/** The unit that a figure shows lengths in. */
export type FigureUnit = "cm" | "in";

/** The words of a figure; a picture shows all of them. */
export interface FigureText {
  readonly title: string;
  /** What is to be seen, for people who do not see it. */
  readonly description: string;
  readonly unit: FigureUnit;
  /** Whom the figure is about, and how many of them were measured. */
  readonly sample: string;
  readonly source: string;
  readonly caveat: string;
}

/** Millimetres in one of the unit: exact. */
export function millimetresIn(unit: FigureUnit): number {
  return unit === "cm" ? 10 : 25.4;
}

/** A length in the unit, without it: tenths of a centimetre, hundredths of an inch, no zeros at the end. */
export function writeLength(mm: number, unit: FigureUnit): string {
  return String(Number((mm / millimetresIn(unit)).toFixed(unit === "cm" ? 1 : 2)));
}

/**
 * A share of people in per cent with one decimal. Only nobody is 0.0 %, and only everybody 100.0 %.
 *
 * @throws {@link InvalidArgumentError} when it is not from 0 to 1.
 *
 * @example
 * ```ts
 * import { writeShare } from "@tapewise/coverage";
 * writeShare(0.1893); // => "18.9 %"
 * writeShare(0.0002); // => "under 0.1 %"
 * ```
 */
export function writeShare(share: number): string {
  if (!(share >= 0 && share <= 1)) throw new InvalidArgumentError("share", share, "from 0 to 1");
  const tenths = Math.round(share * 1000);
  if (share > 1e-9 && tenths === 0) return "under 0.1 %";
  if (share < 1 - 1e-9 && tenths === 1000) return "over 99.9 %";
  return `${(tenths / 10).toFixed(1)} %`;
}

/**
 * Whom a population describes, and how many people are behind it where that is known; for a mixture a number for
 * each part.
 *
 * @example
 * ```ts
 * import { describeSample } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * describeSample(referencePopulation("women"), 990); // => "women, 990 people measured"
 * ```
 */
export function describeSample(
  population: JointModel,
  people: number | readonly number[] | undefined,
): string {
  const counts = people === undefined ? [] : [people].flat();
  const measured = (count: number | undefined): string =>
    count === undefined ? "number of people measured not stated" : `${count} people measured`;
  if (!isMixture(population)) return `${population.about.label}, ${measured(counts[0])}`;
  const parts = population.parts.map(
    ({ weight, model }, k) => `${writeShare(weight)} ${model.about.label} (${measured(counts[k])})`,
  );
  return `${population.about.label}: ${parts.join(", ")}`;
}

/** What the words of a figure take over from its population. */
export function citing({ source, caveat }: About): { readonly source: string; readonly caveat: string } {
  return { source, caveat };
}
