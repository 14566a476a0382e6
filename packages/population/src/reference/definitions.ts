import type { ReferenceVariable } from "./reference-figures.ts";

/** What the reference survey measured for a variable. */
export interface ReferenceDefinition {
  readonly variable: ReferenceVariable;
  /** The survey's own name of the column, or the difference of two columns of one person. */
  readonly column: string;
  /** How it was taken, where that matters. */
  readonly note: string;
}

const STANDING = "Standing erect, from the floor, barefoot.";

/**
 * The variables of the reference survey, ANSUR II (Gordon et al. 2014, NATICK/TR-15/007). Ways of measuring
 * after its measurer's handbook (Hotzman et al. 2011, NATICK/TR-11/017), in our words.
 */
export const referenceDefinitions: readonly ReferenceDefinition[] = [
  {
    variable: "torso-length",
    column: "cervicaleheight - iliocristaleheight",
    note: "The straight vertical distance from C7 to the top of the right iliac crest, not along the spine: a little short.",
  },
  { variable: "stature", column: "stature", note: STANDING },
  { variable: "cervicale-height", column: "cervicaleheight", note: STANDING },
  { variable: "iliac-crest-height", column: "iliocristaleheight", note: `${STANDING} Right iliac crest.` },
  { variable: "suprasternale-height", column: "suprasternaleheight", note: STANDING },
  {
    variable: "back-waist-length",
    column: "waistbacklength",
    note: "Along the back from C7 to the level of the navel (omphalion), lower than the waist of ISO 8559-1.",
  },
  {
    variable: "shoulder-length",
    column: "shoulderlength",
    note: "From the neck to the acromion, right side.",
  },
  { variable: "shoulder-breadth", column: "biacromialbreadth", note: "Between the acromia, sitting." },
  {
    variable: "bideltoid-breadth",
    column: "bideltoidbreadth",
    note: "The greatest over the deltoids, sitting.",
  },
  {
    variable: "interscye-breadth",
    column: "interscyei",
    note: "Across the back between the arms, over the skin.",
  },
  { variable: "chest-girth", column: "chestcircumference", note: "At the level of the nipples." },
  {
    variable: "waist-girth",
    column: "waistcircumference",
    note: "At the level of the navel (omphalion), not between lowest rib and iliac crest as in ISO 7250-1.",
  },
  {
    variable: "hip-girth",
    column: "buttockcircumference",
    note: "At the greatest protrusion of the buttocks.",
  },
  {
    variable: "mass-kg",
    column: "weightkg / 10",
    note: "Body mass in light clothing; the column is in tenths of a kilogram.",
  },
];

/** The order in which the tables of figures list the variables that were measured directly. */
export const measuredVariables: readonly ReferenceVariable[] = [
  "stature",
  "cervicale-height",
  "iliac-crest-height",
  "suprasternale-height",
  "back-waist-length",
  "shoulder-length",
  "shoulder-breadth",
  "bideltoid-breadth",
  "interscye-breadth",
  "chest-girth",
  "waist-girth",
  "hip-girth",
  "mass-kg",
];

/** Where the reference figures come from. */
export const REFERENCE_SOURCE: string =
  "ANSUR II (2012), Gordon et al. 2014, NATICK/TR-15/007; computed from the public individual data, even subject numbers";

/** What the reference figures do not hold for. */
export const REFERENCE_CAVEAT: string =
  "Soldiers of 2012: fitter, younger and more alike than the general public. The torso length is the straight " +
  "vertical distance from C7 to the top of the right iliac crest, a little shorter than along the spine; the " +
  "waist girth is at the level of the navel.";
