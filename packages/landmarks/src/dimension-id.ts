/**
 * The dimensions of the body that packs and their harnesses use, by the name that readings, charts
 * and priors share.
 */
export const dimensionIds = [
  "torso-length",
  "hip-belt-girth",
  "hip-girth",
  "waist-girth",
  "chest-girth",
  "underbust-girth",
  "stature",
  "shoulder-breadth",
  "bideltoid-breadth",
  "shoulder-length",
  "back-waist-length",
  "cervicale-height",
  "iliac-crest-height",
  "neck-base-girth",
  "interscye-breadth",
  "suprasternale-height",
] as const;

/** One of {@link dimensionIds}. */
export type DimensionId = (typeof dimensionIds)[number];
