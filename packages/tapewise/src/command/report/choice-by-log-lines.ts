import type { ChartCorrection } from "@tapewise/afterwards";
import { speakDimension } from "@tapewise/charts";
import { writePercent } from "@tapewise/fit";
import type { ChartByLog, ChoiceByLog, Picked } from "../log/choose-by-log.ts";
import { cleanWord } from "../text/clean.ts";
import { bullets } from "../text/wrap.ts";
import { counted } from "./log-lines.ts";
import { note } from "./sample-lines.ts";
import { lengthIn } from "./words.ts";

/** What outcomes say of the charts that were chosen from, and what that changed. */
export function choiceByLogLines(choices: readonly ChoiceByLog[], unit: "cm" | "in"): string[] {
  if (choices.length === 0) return [];
  return [
    "By what became of earlier choices",
    ...bullets(choices.map((one) => cleanWord(sentences(one, unit)))),
    "",
  ];
}

/** What outcomes say of the charts that a shelf is lent by, and whose ranges were moved for it; in centimetres. */
export function lendByLogLines(charts: readonly ChartByLog[]): string[] {
  if (charts.length === 0) return [];
  const lines = charts.map((one) => {
    const head = `${one.chart}, ${counted(one.outcomes, "outcome", "outcomes")}`;
    if (one.moved.length === 0) return `${head}: ${takenAsPrinted(one)}.`;
    return `${head}: ${one.moved.map((each) => offWords(each, "cm")).join("; ")}. Its ranges were moved to there.`;
  });
  return [
    "By what became of earlier choices",
    ...bullets(lines.map(cleanWord)),
    ...note("How unsure each chart still is, is counted into the chances."),
    "",
  ];
}

function takenAsPrinted({ known }: ChartByLog): string {
  if (known.length === 0) return "nothing to learn from; taken as printed";
  const chances = known.map(
    ({ dimension, learned }) =>
      `${speakDimension(dimension)} off with ${writePercent(1 - learned.asPrintedProbability)}`,
  );
  return `taken as printed, for it is not sure enough that it is off (${chances.join(", ")})`;
}

function sentences(choice: ChoiceByLog, unit: "cm" | "in"): string {
  const { chart, outcomes, known, moved, printed, corrected, withDoubt } = choice;
  const head = `${chart}, ${counted(outcomes, "outcome", "outcomes")}`;
  const answer = words(withDoubt);
  const alone = `By the printed chart alone it would be ${words(printed)}.`;
  if (known.length === 0) {
    return `${head}: ${takenAsPrinted(choice)}. How far a maker nobody has reported on may be off, an assumption, is counted in below: ${answer}. ${alone}`;
  }
  if (moved.length === 0) {
    return `${head}: ${takenAsPrinted(choice)}. That it may be is counted in below: ${answer}. ${alone}`;
  }
  return `${head}: ${moved.map((one) => offWords(one, unit)).join("; ")}. Below, its ranges stand where outcomes have them, and what is left open about them is counted in: ${answer}. Were the offset known, it would be ${words(corrected)}. ${alone}`;
}

function words({ pick, probability }: Picked): string {
  return `${pick}, with ${writePercent(probability)}`;
}

function offWords({ dimension, learned }: ChartCorrection, unit: "cm" | "in"): string {
  const { mean, lower, upper } = learned.offsetMm;
  const way = dimension.endsWith("-girth") ? ["wider", "narrower"] : ["longer", "shorter"];
  const [first, last] = mean < 0 ? [-upper, -lower] : [lower, upper];
  const from = `${learned.outcomes} tell`;
  return `the ${speakDimension(dimension)} seems ${lengthIn(Math.abs(mean), unit)} ${way[mean < 0 ? 1 : 0]} than printed (90 %: ${lengthIn(first, unit)} to ${lengthIn(last, unit)}; ${from})`;
}
