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

/** Refuses what is not within 0 and 1, both included. */
export function requireProbability(argument: string, value: number): void {
  if (!(value >= 0 && value <= 1))
    throw new InvalidArgumentError(argument, value, "a probability from 0 to 1");
}

/** Refuses an interval whose bounds are not numbers or stand the wrong way round. */
export function requireOrdered(lowerName: string, lower: number, upperName: string, upper: number): void {
  requireNumber(lowerName, lower);
  requireNumber(upperName, upper);
  if (lower > upper) throw new InvalidArgumentError(upperName, upper, `at least ${lowerName} (${lower})`);
}

/** The least and the greatest degrees of freedom and shapes: beyond them results underflow or take seconds. */
const SMALLEST = 1e-10;
const LARGEST = 1e10;

/** Refuses degrees of freedom of Student's t that are too small; `Infinity` passes. */
export function requireDegrees(argument: string, value: number): void {
  if (!(value >= SMALLEST)) throw new InvalidArgumentError(argument, value, `a number from ${SMALLEST} up`);
}

/** Refuses shapes and degrees of freedom that the incomplete gamma and beta functions are not made for. */
export function requireShape(argument: string, value: number): void {
  if (!(value >= SMALLEST && value <= LARGEST)) {
    throw new InvalidArgumentError(argument, value, `a number from ${SMALLEST} to ${LARGEST}`);
  }
}

/** Refuses what is below zero; `Infinity` passes. */
export function requireNotNegative(argument: string, value: number): void {
  if (!(value >= 0)) throw new InvalidArgumentError(argument, value, "zero or a number above it");
}

/** Refuses what is not from −1 to 1. */
export function requireCorrelation(argument: string, value: number): void {
  if (!(value >= -1 && value <= 1))
    throw new InvalidArgumentError(argument, value, "a correlation from -1 to 1");
}
