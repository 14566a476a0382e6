import type { SourceId } from "./sources/source-id.ts";

/**
 * How well we know that a standard says what we say it does.
 *
 * - `printed`: read in the publication itself.
 * - `second-hand`: read in another publication that quotes it.
 * - `from memory`: remembered; look it up before you rely on it.
 */
export type Origin = "printed" | "second-hand" | "from memory";

/** The name that a standard or a survey gives to a landmark or a dimension. */
export interface StandardName {
  readonly standard:
    | "ISO 7250-1:2017"
    | "ISO 8559-1:2017"
    | "NATICK/TR-15/007"
    | "NHANES anthropometry manual";
  readonly term: string;
  /** The clause or section number; left out where it is not known. */
  readonly clause?: string;
  readonly origin: Origin;
  /** What the standard does otherwise than this guide; absent where both mean the same. */
  readonly differs?: string;
}

/** What a publication found, in our words. */
export interface Finding {
  readonly source: SourceId;
  readonly finding: string;
}

/** What a figure rests on: custom, a guess that says so, or a publication and what it found. */
export type Basis = "common practice, no source" | "assumption" | Finding;

/**
 * How far and which way a mistake moves a number.
 *
 * `+` makes the reading too large, `-` too small, `both` either. The sizes are the range that is
 * usual when the mistake happens, in millimetres, without their sign.
 */
export interface ErrorSize {
  readonly direction: "+" | "-" | "both";
  readonly fromMm: number;
  readonly toMm: number;
  readonly basis: Basis;
}
