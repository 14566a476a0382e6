import type { ErrorSize, StandardName } from "./basis.ts";
import type { CautionCode } from "./cautions/caution-code.ts";
import type { DimensionId } from "./dimension-id.ts";
import type { MeasuredBy, Tool } from "./hands-and-tools.ts";
import type { LandmarkId } from "./landmark-id.ts";

/** How a dimension runs: upright from the floor, along the skin, around the body, or straight across. */
export type DimensionKind = "straight height" | "length along the body" | "girth" | "breadth";

/** One step of a way; a step that can hurt names the caution to read first. */
export interface Step {
  readonly text: string;
  readonly caution?: CautionCode;
}

/** One way to take a dimension. */
export interface Way {
  readonly tool: Tool;
  readonly who: MeasuredBy;
  /** When this way is the one to choose, and what it costs. */
  readonly suits: string;
  readonly steps: readonly [Step, ...Step[]];
}

/** A mistake that readings of this dimension suffer from. */
export interface Slip {
  /** Stable, lower case, unique within the dimension; the same code means the same slip everywhere. */
  readonly code: string;
  /** What happens. */
  readonly what: string;
  readonly size: ErrorSize;
  /** How it shows in the readings. */
  readonly shows: string;
  /** How to find out whether it happened. */
  readonly detect: string;
  readonly mend: string;
}

/** What a guide says of one dimension, without its names. */
export interface DimensionGuide {
  readonly id: DimensionId;
  readonly kind: DimensionKind;
  readonly definition: string;
  /** What the number decides when a pack is chosen. */
  readonly use: string;
  /** Every point and level that it runs between or through. */
  readonly landmarks: readonly [LandmarkId, ...LandmarkId[]];
  readonly standards: readonly StandardName[];
  readonly posture: readonly [string, ...string[]];
  readonly needs: readonly [string, ...string[]];
  readonly ways: readonly [Way, ...Way[]];
  /** Why it cannot well be taken alone; present where no way is for `self`. */
  readonly helperReason?: string;
  readonly slips: readonly [Slip, ...Slip[]];
}

/** The names of one dimension. */
export interface DimensionNames {
  readonly id: DimensionId;
  readonly name: string;
  /** Other words that people and charts write for it. */
  readonly synonyms: readonly string[];
}

/** Everything about one dimension: its names and how to take it. */
export interface Dimension extends DimensionGuide, DimensionNames {}
