import type { DimensionId } from "../dimension-id.ts";

/**
 * What each dimension is called in a sentence: common practice, no source. Apart from the synonyms, so
 * that a program which names dimensions and reads no names does not carry those.
 */
export const spokenNames: Readonly<Record<DimensionId, string>> = {
  "torso-length": "torso length",
  "hip-belt-girth": "hip-belt girth",
  "hip-girth": "hip girth",
  "waist-girth": "waist girth",
  "chest-girth": "chest girth",
  "underbust-girth": "underbust girth",
  stature: "stature",
  "shoulder-breadth": "shoulder breadth",
  "bideltoid-breadth": "bideltoid breadth",
  "shoulder-length": "shoulder length",
  "back-waist-length": "back waist length",
  "cervicale-height": "cervicale height",
  "iliac-crest-height": "iliac-crest height",
  "neck-base-girth": "neck-base girth",
  "interscye-breadth": "interscye breadth",
  "suprasternale-height": "suprasternale height",
};
