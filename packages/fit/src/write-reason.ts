import { type ChartDimension, speakDimension } from "@tapewise/charts";
import { fillTemplate } from "@tapewise/outcome";
import { formatLength, millimetres } from "@tapewise/units";
import type { PlainReason, Reason } from "./reason.ts";
import { writePercent } from "./write-percent.ts";

/** Unit of lengths in sentences. */
export type SentenceUnit = "cm" | "in";

/**
 * Adds the sentence to a reason: lengths in the reader's unit (tenths of a centimetre or eighths of an
 * inch, half to even), probabilities as percentages, dimensions by their name.
 */
export function writeReason<Code extends string>(
  texts: Readonly<Record<Code, string>>,
  reason: PlainReason<Code>,
  unit: SentenceUnit,
): Reason<Code> {
  const words = Object.entries(reason.facts).map(([name, value]) => [name, writeFact(name, value, unit)]);
  return { ...reason, sentence: fillTemplate(texts[reason.code], Object.fromEntries(words)) };
}

function writeFact(name: string, value: string | number, unit: SentenceUnit): string {
  if (typeof value === "string")
    return /dimension$/i.test(name) ? speakDimension(value as ChartDimension) : value;
  if (name.endsWith("Mm")) return writeLength(value, unit);
  if (name.endsWith("Probability")) return writePercent(value);
  return String(Number(value.toPrecision(4)));
}

/** A length in mm in the reader's unit; what would be rounded to nothing is said to be less than a step. */
function writeLength(lengthMm: number, unit: SentenceUnit): string {
  const length = millimetres(lengthMm);
  const isShort = lengthMm > 0 && lengthMm < (unit === "cm" ? 0.5 : 25.4 / 16);
  if (unit === "cm") {
    if (isShort) return "less than 0.1 cm";
    return formatLength(length, { unit: "cm", decimals: 1, rounding: "half-even" });
  }
  if (isShort) return "less than 1/8 in";
  return formatLength(length, { unit: "in", denominator: 8, rounding: "half-even" });
}
