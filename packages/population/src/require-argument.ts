import { InvalidArgumentError } from "@tapewise/outcome";

/** Refuses `NaN` (and whatever is not a number at all); infinities pass. */
export function requireNumber(argument: string, value: number): void {
  if (typeof value !== "number" || Number.isNaN(value)) {
    throw new InvalidArgumentError(argument, value, "a number");
  }
}

/** Refuses `NaN` and infinities. */
export function requireFinite(argument: string, value: number): void {
  if (!Number.isFinite(value)) throw new InvalidArgumentError(argument, value, "a finite number");
}

/** Refuses what is not above zero and finite. */
export function requirePositive(argument: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) {
    throw new InvalidArgumentError(argument, value, "a finite number above 0");
  }
}

/** Refuses what is not within 0 and 1, both included. */
export function requireProbability(argument: string, value: number): void {
  if (!(value >= 0 && value <= 1)) {
    throw new InvalidArgumentError(argument, value, "a probability from 0 to 1");
  }
}

/** Refuses a confidence that is not between 0 and 1, both excluded. */
export function requireConfidence(argument: string, value: number): void {
  if (!(value > 0 && value < 1)) {
    throw new InvalidArgumentError(argument, value, "a probability between 0 and 1, neither of them");
  }
}

/** Refuses what is no whole number of at least `least`. */
export function requireCount(argument: string, value: number, least: number): void {
  if (!(Number.isSafeInteger(value) && value >= least)) {
    throw new InvalidArgumentError(argument, value, `a whole number of at least ${least}`);
  }
}

/** Refuses a sample of fewer than `least` values, or with something else than finite numbers in it. */
export function requireSample(argument: string, values: readonly number[], least: number): void {
  if (!(Array.isArray(values) && values.length >= least)) {
    const many = least === 1 ? "at least one number" : `at least ${least} numbers`;
    throw new InvalidArgumentError(argument, values, many);
  }
  for (const [index, value] of values.entries()) requireFinite(`${argument}[${index}]`, value);
}

/** Refuses weights that are not one finite number from 0 up for each value, with at least one above 0. */
export function requireWeights(argument: string, weights: readonly number[], count: number): void {
  if (!(Array.isArray(weights) && weights.length === count)) {
    throw new InvalidArgumentError(argument, weights, `a weight for each of the ${count} values`);
  }
  for (const [index, weight] of weights.entries()) {
    if (!(Number.isFinite(weight) && weight >= 0)) {
      throw new InvalidArgumentError(`${argument}[${index}]`, weight, "a finite number from 0 up");
    }
  }
  if (!weights.some((weight) => weight > 0)) {
    throw new InvalidArgumentError(argument, weights, "weights of which at least one is above 0");
  }
}
