import { InvalidArgumentError } from "@tapewise/outcome";

/** Refuses `NaN` and infinities. */
export function requireFinite(argument: string, value: number): void {
  if (!Number.isFinite(value)) throw new InvalidArgumentError(argument, value, "a finite number");
}

/** Refuses what is not finite or below zero. */
export function requireNotNegative(argument: string, value: number): void {
  if (!(value >= 0 && Number.isFinite(value))) {
    throw new InvalidArgumentError(argument, value, "a finite number, 0 or more");
  }
}

/** Refuses what is not finite or not above zero. */
export function requirePositive(argument: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) {
    throw new InvalidArgumentError(argument, value, "a finite number above 0");
  }
}

/** Refuses what is not a probability strictly between 0 and 1. */
export function requireShare(argument: string, value: unknown): void {
  if (!(typeof value === "number" && value > 0 && value < 1)) {
    throw new InvalidArgumentError(argument, value, "a probability above 0 and below 1");
  }
}

/** Refuses what is no whole number from `least` to `most`. */
export function requireCount(
  argument: string,
  value: number,
  least = 1,
  most: number = Number.MAX_SAFE_INTEGER,
): void {
  if (!(Number.isSafeInteger(value) && value >= least && value <= most)) {
    const upTo = most === Number.MAX_SAFE_INTEGER ? ` or more` : ` to ${most}`;
    throw new InvalidArgumentError(argument, value, `a whole number, ${least}${upTo}`);
  }
}

/** Refuses degrees of freedom that are not above 0; `Infinity` passes. */
export function requireDegrees(argument: string, value: number): void {
  if (!(value > 0)) throw new InvalidArgumentError(argument, value, "a number above 0");
}
