import { InvalidArgumentError } from "@tapewise/outcome";

/** Refuses what is no whole number of at least `least`. */
export function requireCount(argument: string, value: number, least: number): void {
  if (!(Number.isSafeInteger(value) && value >= least)) {
    throw new InvalidArgumentError(argument, value, `a whole number of at least ${least}`);
  }
}

/** Refuses what is not between 0 and 1, neither of them. */
export function requireChance(argument: string, value: number): void {
  if (!(value > 0 && value < 1)) {
    throw new InvalidArgumentError(argument, value, "a probability between 0 and 1, neither of them");
  }
}

/** Refuses what is not above zero and finite. */
export function requirePositive(argument: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) {
    throw new InvalidArgumentError(argument, value, "a finite number of millimetres above 0");
  }
}

/** Refuses what is below zero or not finite. */
export function requireLength(argument: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) {
    throw new InvalidArgumentError(argument, value, "a finite number of millimetres from 0 up");
  }
}
