/** A normal distribution (JCGM 101:2008, 6.4.7). */
export interface NormalInput {
  readonly shape: "normal";
  readonly mean: number;
  /** Standard deviation, 0 or more. */
  readonly sd: number;
}

/**
 * Student's t, scaled and shifted (JCGM 101:2008, 6.4.9): what a mean of n readings is worth, with the scale
 * s/√n and n − 1 degrees of freedom.
 */
export interface StudentTInput {
  readonly shape: "student-t";
  readonly mean: number;
  /** 0 or more. It is not the standard deviation, which is √(ν/(ν − 2)) times as large. */
  readonly scale: number;
  /** Above 2, so that there is a standard deviation. */
  readonly degreesOfFreedom: number;
}

/** Everything from `lower` to `upper` equally likely (JCGM 101:2008, 6.4.2). */
export interface RectangularInput {
  readonly shape: "rectangular";
  readonly lower: number;
  readonly upper: number;
}

/** Two equal rectangular errors added (JCGM 101:2008, 6.4.5). */
export interface TriangularInput {
  readonly shape: "triangular";
  readonly lower: number;
  readonly upper: number;
}

/** Two rectangular errors added, one wider than the other (JCGM 101:2008, 6.4.4). */
export interface TrapezoidalInput {
  readonly shape: "trapezoidal";
  readonly lower: number;
  readonly upper: number;
  /** The width of the top as a part of the whole: 0 is a triangle, 1 a rectangle. */
  readonly topShare: number;
}

/** A rectangle whose bounds are themselves known within ±`inexactness` (JCGM 101:2008, 6.4.3). */
export interface CurvilinearTrapezoidInput {
  readonly shape: "curvilinear-trapezoid";
  readonly lower: number;
  readonly upper: number;
  /** 0 or more, and no more than half the width. */
  readonly inexactness: number;
}

/** What swings between two bounds like a sine, U-shaped (JCGM 101:2008, 6.4.6). */
export interface ArcsineInput {
  readonly shape: "arcsine";
  readonly lower: number;
  readonly upper: number;
}

/** What is believed of a quantity that goes into a measurement. All figures in the unit of the quantity. */
export type InputDistribution =
  | NormalInput
  | StudentTInput
  | RectangularInput
  | TriangularInput
  | TrapezoidalInput
  | CurvilinearTrapezoidInput
  | ArcsineInput;
