import type { DigitCounts, DigitPreference } from "../reliability/digit-preference.ts";
import type { ToldSection } from "./told.ts";
import { writeChance } from "./write-figures.ts";

/** Chances below this are told as a preference: two last digits are seldom so unequal by chance. Common practice. */
const SELDOM = 0.01;

/** How often each last digit was written. */
export function tellDigits({ all, unknown }: DigitPreference): ToldSection | undefined {
  if (all.length === 0) return undefined;
  const preferred = all.filter(prefersDigits);
  return {
    id: "digits",
    title: "Last digits",
    tables: all.map(({ unit, counts, stepMm }) => ({
      header: [
        `digit (${unit}, step ${Number(stepMm.toPrecision(4))} mm)`,
        ...counts.map((_, digit) => String(digit)),
      ],
      rows: [["readings", ...counts.map(String)]],
      wordColumns: 1,
    })),
    notes: [
      ...all.map(
        ({ unit, index, pValue }) =>
          `In ${unit}: index ${index.toFixed(0)} of 100 (0 without preference), p = ${writeChance(pValue)} after Pearson's test, widened for subjects read often.`,
      ),
      ...(unknown === 0 ? [] : [`${unknown} readings do not say how they were written.`]),
    ],
    meaning:
      preferred.length === 0
        ? "No last digit is written so often that it must be habit: the marks of the tape are read and not guessed."
        : `Some last digits are written too often (${preferred.map(favourites).join("; ")}), as happens where a tape is read to a round mark: such readings are coarser than they look.`,
  };
}

/** Whether some digits are written more often than chance would have it. */
export function prefersDigits({ pValue }: DigitCounts): boolean {
  return pValue < SELDOM;
}

/** The digits that are written more than half as often again as expected, or the one written most. */
function favourites({ counts, readings }: DigitCounts): string {
  const expected = readings / counts.length;
  const often = counts.map((_, digit) => digit).filter((digit) => (counts[digit] ?? 0) > 1.5 * expected);
  return (often.length > 0 ? often : [counts.indexOf(Math.max(...counts))]).join(" and ");
}
