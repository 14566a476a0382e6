import { createIssue, type Issue } from "@tapewise/outcome";
import { safeParseLength } from "@tapewise/units";
import { InvalidArgumentError } from "commander";
import { tapewiseIssues } from "../issues.ts";

/** A probability as people write it: 0.95 or 95%. */
export function readProbability(text: string): number {
  const [, number = "", percent] = /^(\d*\.?\d+)\s*(%?)$/.exec(text.trim()) ?? [];
  const chance = percent === "%" ? Number(number) / 100 : Number(number);
  if (number !== "" && chance > 0 && chance < 1) return chance;
  throw new InvalidArgumentError("It must lie between 0 and 1, such as 0.95 or 95%.");
}

/** A multiplier of a standard deviation. */
export function readMultiplier(text: string): number {
  const value = Number(text);
  if (/^\d*\.?\d+$/.test(text) && value > 0 && value <= 10) return value;
  throw new InvalidArgumentError("It must be a number above 0, such as 1.96 or 2.");
}

/** A reader of whole numbers. */
export function wholeNumber(least: number, most: number): (text: string) => number {
  return (text) => {
    const value = Number(text);
    if (/^-?\d+$/.test(text) && value >= least && value <= most) return value;
    throw new InvalidArgumentError(`It must be a whole number from ${least} to ${most}.`);
  };
}

/** A length above 0 with its unit, in mm. */
export function readLength(text: string): number {
  const outcome = safeParseLength(text);
  if (!outcome.ok) throw new InvalidArgumentError(outcome.issues.map(sentence).join(" "));
  return outcome.value.mm;
}

/** A length of 0 or more; 0 needs no unit. */
export function readNoLessThanZero(text: string): number {
  const trimmed = text.trim();
  if (/^0+(?:[.,]0+)?(?:\s*[a-z]+)?$/i.test(trimmed)) return 0;
  if (/^[-\u2212]/.test(trimmed)) throw new InvalidArgumentError('It must be 0 or more, such as "5 mm".');
  return readLength(text);
}

/**
 * The most that ranges of a chart may be off, either way: more than a torso differs from the shortest adult to the
 * tallest, so that only a slip of the unit lies beyond. Assumption.
 */
const MOST_OFFSET_MM = 200;

/** A length to either side, at most 200 mm: "-5 mm" is 5 mm too short. */
export function readOffset(text: string): number {
  const [, sign, rest = ""] = /^([+-]?)(.*)$/s.exec(text.trim()) ?? [];
  const mm = withinReach(readNoLessThanZero(rest), text);
  return sign === "-" && mm !== 0 ? -mm : mm;
}

/** The standard uncertainty of such a length. */
export function readOffsetUncertainty(text: string): number {
  return withinReach(readNoLessThanZero(text), text);
}

function withinReach(mm: number, received: string): number {
  if (mm <= MOST_OFFSET_MM) return mm;
  const facts = { limit: MOST_OFFSET_MM };
  throw new InvalidArgumentError(
    sentence(createIssue(tapewiseIssues, "offset-too-large", { received, facts })),
  );
}

/** An issue behind the words of the library for options, which name what was given. */
function sentence({ message, expected, code }: Issue): string {
  return `${message}. Expected: ${expected}. [${code}]`;
}
