import type { DimensionId } from "../dimension-id.ts";

/** How the survey's smallest and largest reading are widened to other people. */
export interface WideningRule {
  /** The lower limit as a percentage of the smallest reading. */
  readonly lowerPercent: number;
  /** The upper limit as a percentage of the largest reading. */
  readonly upperPercent: number;
  /** Why these percentages. */
  readonly basis: string;
}

/** Soldiers are chosen by height and kept in shape, so everybody else is more varied: by this much. */
export const wideningRules: Readonly<Record<"bone" | "girth", WideningRule>> = {
  bone: {
    lowerPercent: 90,
    upperPercent: 110,
    basis: "Assumption: heights, lengths and breadths outside an army reach a tenth further at both ends.",
  },
  girth: {
    lowerPercent: 85,
    upperPercent: 140,
    basis: "Assumption: girths outside an army reach a seventh further down and two fifths further up.",
  },
};

/** The lower limit of a child as a percentage of an adult's: about a child one metre tall. Assumption. */
export const childLowerPercent = 70;

/** From which survey rows the limits of a dimension are widened, and by which rule. */
export interface LimitRule {
  readonly from: readonly [DimensionId, ...DimensionId[]];
  readonly rule: "bone" | "girth";
  /** What the limits rest on. */
  readonly basis: string;
}

const SURVEYED =
  "The smallest and the largest reading of ANSUR II (NATICK/TR-15/007), widened by assumption.";

/** One rule for each dimension. */
export const limitRules: Readonly<Record<DimensionId, LimitRule>> = {
  "torso-length": {
    from: ["torso-length"],
    rule: "bone",
    basis:
      "The smallest and the largest straight height from iliac crest to C7 in ANSUR II (NATICK/TR-15/007, even subject numbers), widened by assumption.",
  },
  "hip-belt-girth": {
    from: ["waist-girth", "hip-girth"],
    rule: "girth",
    basis:
      "Assumption: no survey figure; it lies between waist girth and hip girth, so their extremes are widened.",
  },
  "hip-girth": { from: ["hip-girth"], rule: "girth", basis: SURVEYED },
  "waist-girth": { from: ["waist-girth"], rule: "girth", basis: SURVEYED },
  "chest-girth": { from: ["chest-girth"], rule: "girth", basis: SURVEYED },
  "underbust-girth": {
    from: ["waist-girth", "chest-girth"],
    rule: "girth",
    basis:
      "Assumption: no survey figure; it lies between waist girth and chest girth, so their extremes are widened.",
  },
  stature: { from: ["stature"], rule: "bone", basis: SURVEYED },
  "shoulder-breadth": { from: ["shoulder-breadth"], rule: "bone", basis: SURVEYED },
  "bideltoid-breadth": { from: ["bideltoid-breadth"], rule: "girth", basis: SURVEYED },
  "shoulder-length": { from: ["shoulder-length"], rule: "bone", basis: SURVEYED },
  "back-waist-length": { from: ["back-waist-length"], rule: "bone", basis: SURVEYED },
  "cervicale-height": { from: ["cervicale-height"], rule: "bone", basis: SURVEYED },
  "iliac-crest-height": { from: ["iliac-crest-height"], rule: "bone", basis: SURVEYED },
  "neck-base-girth": {
    from: ["neck-base-girth"],
    rule: "girth",
    basis:
      "The smallest and the largest reading of the men of ANSUR II (NATICK/TR-15/007), widened by assumption to women too.",
  },
  "interscye-breadth": { from: ["interscye-breadth"], rule: "girth", basis: SURVEYED },
  "suprasternale-height": { from: ["suprasternale-height"], rule: "bone", basis: SURVEYED },
};
