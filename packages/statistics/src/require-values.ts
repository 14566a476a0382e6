import { InvalidArgumentError } from "@tapewise/outcome";

/** Refuses a sample that is empty or holds something else than finite numbers. */
export function requireValues(argument: string, values: readonly number[]): void {
  if (values.length === 0) throw new InvalidArgumentError(argument, values, "at least one number");
  for (let i = 0; i < values.length; i += 1) {
    if (!Number.isFinite(values[i])) {
      throw new InvalidArgumentError(`${argument}[${i}]`, values[i], "a finite number");
    }
  }
}

/** Refuses values so large that their sum, or their squares, left the range of doubles. */
export function requireNoOverflow(argument: string, values: readonly number[], result: number): void {
  if (!Number.isFinite(result)) {
    throw new InvalidArgumentError(argument, values, "numbers whose sum and squares a double can hold");
  }
}
