import type { ErrorSize, Finding, StandardName } from "./basis.ts";
import type { DimensionId } from "./dimension-id.ts";
import type { LandmarkId } from "./landmark-id.ts";

/** What taking a wrong point does to one dimension. */
export interface Shift extends ErrorSize {
  readonly dimension: DimensionId;
}

/** A neighbour that a landmark is mistaken for. */
export interface Confusion {
  /** The neighbour, where it is a landmark of this guide. */
  readonly landmark?: LandmarkId;
  /** The neighbour in everyday words. */
  readonly name: string;
  /** How to tell the two apart. */
  readonly tell: string;
  /** What the number does when the neighbour is taken instead. */
  readonly shifts: readonly [Shift, ...Shift[]];
}

/** One point or level of the body: what it is and how to find it by touch. */
export interface Landmark {
  readonly id: LandmarkId;
  /** The anthropometrist's name. */
  readonly name: string;
  /** What most people would call it. */
  readonly everydayName: string;
  /** `bone` can be felt as bone, `surface` lies on soft tissue, `level` is a height all round the body. */
  readonly kind: "bone" | "surface" | "level";
  readonly definition: string;
  readonly standards: readonly StandardName[];
  /** The steps that find it, in order. */
  readonly find: readonly [string, ...string[]];
  /** How to make sure that it is the right one. */
  readonly check: readonly [string, ...string[]];
  readonly confusions: readonly Confusion[];
  /** What has been published about how well it is found. */
  readonly findings: readonly Finding[];
}
