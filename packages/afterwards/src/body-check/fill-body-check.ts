import { writePercent } from "@tapewise/fit";
import { type Facts, fillTemplate } from "@tapewise/outcome";
import { formatLength, millimetres } from "@tapewise/units";
import type { BodyCheckStep } from "./body-check-state.ts";
import { findItem } from "./find-item.ts";
import type { BodyCheckTexts } from "./texts.ts";

/** A step in words. */
export interface WrittenStep {
  /** What to do or what came of it; several where several things are to be set. */
  readonly sentences: readonly string[];
  /** The answers to choose from, in order; empty unless something is asked. */
  readonly choices: readonly WrittenChoice[];
}

/** An answer in words. */
export interface WrittenChoice {
  readonly id: string;
  readonly answer: string;
  /** What it tells about the length, the belt or the setting. */
  readonly tells: string;
}

/**
 * A step of the check in the words that are handed in: {@link writeBodyCheck} for a program that holds the texts of
 * one language already, and has to load those of no other.
 *
 * @throws `InvalidArgumentError` for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { bodyCheckTexts, fillBodyCheck } from "@tapewise/afterwards";
 * const step = { kind: "adjust", adjustments: ["tighten-belt"] } as const;
 * const short = { ...bodyCheckTexts, adjustments: { ...bodyCheckTexts.adjustments, "tighten-belt": "Tighter." } };
 * fillBodyCheck(step, "cm", short).sentences; // => ["Tighter."]
 * ```
 */
export function fillBodyCheck(step: BodyCheckStep, unit: "cm" | "in", texts: BodyCheckTexts): WrittenStep {
  const ended = (...sentences: readonly string[]): WrittenStep => ({ sentences, choices: [] });
  switch (step.kind) {
    case "ask": {
      const { facts, answers } = findItem(step.item);
      const words = write(facts, unit);
      const choices = answers.map(({ id }): WrittenChoice => {
        const text = texts.answers[step.item][id];
        return {
          id,
          answer: fillTemplate(text?.answer ?? id, words),
          tells: fillTemplate(text?.tells ?? "", words),
        };
      });
      const why = step.because === undefined ? [] : [texts.contradictions[step.because]];
      return { sentences: [...why, fillTemplate(texts.look[step.item], words)], choices };
    }
    case "adjust":
      return ended(...step.adjustments.map((code) => texts.adjustments[code]));
    case "exchange": {
      const { part, from, to } = step;
      const words = {
        from,
        to,
        probability: writePercent(step.probability),
        fromProbability: writePercent(step.fromProbability),
      };
      return ended(
        fillTemplate(part === "belt" ? texts.ends.exchangeBelt : texts.ends.exchangeHarness, words),
      );
    }
    case "sits-right":
      return ended(fillTemplate(texts.ends.sitsRight, { size: step.size }));
    case "see-fitter":
      return ended(texts.fitter[step.reason]);
  }
}

function write(facts: Readonly<Record<string, number>>, unit: "cm" | "in"): Facts {
  const words = Object.entries(facts).map(([name, value]): [string, string] => {
    if (name.endsWith("Degrees")) return [name, `${value}°`];
    if (!name.endsWith("Mm")) return [name, String(value)];
    const length = millimetres(value);
    return [
      name,
      unit === "cm"
        ? formatLength(length, { unit, decimals: 0, rounding: "half-even" })
        : formatLength(length, { unit, denominator: 2, rounding: "half-even" }),
    ];
  });
  return Object.fromEntries(words);
}
