import type { ChartDimension } from "@tapewise/charts";
import { dimensionName } from "@tapewise/landmarks";
import { type Facts, fillTemplate } from "@tapewise/outcome";
import { formatLength, millimetres } from "@tapewise/units";
import type { Reason } from "./reason.ts";

/** Unit of lengths in sentences. */
export type SentenceUnit = "cm" | "in";

/**
 * Makes a reason: the code, the facts, and the sentence with lengths in the reader's unit (tenths of a
 * centimetre or eighths of an inch, half to even) and probabilities as percentages.
 */
export function writeReason<Code extends string>(
  texts: Readonly<Record<Code, string>>,
  code: Code,
  facts: Facts,
  unit: SentenceUnit,
): Reason<Code> {
  const words: Record<string, string> = {};
  for (const [name, value] of Object.entries(facts)) words[name] = writeFact(name, value, unit);
  return { code, facts, sentence: fillTemplate(texts[code], words) };
}

function writeFact(name: string, value: string | number, unit: SentenceUnit): string {
  if (typeof value === "string") return value;
  if (name.endsWith("Mm")) return writeLength(value, unit);
  if (name.endsWith("Probability")) return writePercent(value);
  return String(Number(value.toPrecision(4)));
}

/** A length in mm in the reader's unit. */
export function writeLength(lengthMm: number, unit: SentenceUnit): string {
  const length = millimetres(lengthMm);
  return unit === "cm"
    ? formatLength(length, { unit: "cm", decimals: 1, rounding: "half-even" })
    : formatLength(length, { unit: "in", denominator: 8, rounding: "half-even" });
}

/**
 * A probability as a percentage that does not claim too much: whole numbers, and words beyond 1 and 99.
 *
 * @example
 * ```ts
 * import { writePercent } from "@tapewise/fit";
 * writePercent(0.934); // => "93 %"
 * writePercent(0.9999); // => "more than 99 %"
 * ```
 */
export function writePercent(probability: number): string {
  if (probability < 0.01) return probability === 0 ? "0 %" : "less than 1 %";
  if (probability > 0.99) return probability === 1 ? "100 %" : "more than 99 %";
  return `${Math.round(probability * 100)} %`;
}

/** A dimension as it is read aloud. */
export function speakDimension(dimension: ChartDimension): string {
  return dimension === "unstated-hip-girth" ? "hip girth" : dimensionName(dimension);
}
