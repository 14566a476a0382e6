import { InvalidArgumentError } from "@tapewise/outcome";

/** Lengths and errors beyond this have squares and fourth powers that a double cannot hold. */
const LARGEST_LENGTH_MM = 1e70;

/** The largest standard deviation and the coarsest step, in mm, that anybody can mean: a kilometre. */
export const LARGEST_ERROR_MM = 1e6;

/** Whether a value is a standard deviation or a step in mm. */
export function isErrorMm(value: unknown): boolean {
  return typeof value === "number" && value >= 0 && value <= LARGEST_ERROR_MM;
}

/** Refuses what is not a length above 0 mm. */
export function requireLength(argument: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0 && value <= LARGEST_LENGTH_MM)) {
    throw new InvalidArgumentError(argument, value, `a length above 0 mm, up to ${LARGEST_LENGTH_MM}`);
  }
}

/** Refuses what is not a step between marks in mm; 0 stands for no rounding. */
export function requireStep(argument: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0 && value <= LARGEST_LENGTH_MM)) {
    throw new InvalidArgumentError(argument, value, `a step from 0 mm up to ${LARGEST_LENGTH_MM}`);
  }
}
