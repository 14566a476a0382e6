/**
 * The points and levels of the body that the dimensions run between, and the neighbours they are
 * mistaken for. Ordered from the head down.
 */
export const landmarkIds = [
  "vertex",
  "c6",
  "cervicale",
  "t1",
  "lateral-neck-point",
  "front-neck-point",
  "suprasternale",
  "acromion",
  "deltoid-point",
  "back-armpit-fold",
  "mesosternale",
  "thelion",
  "underbust-level",
  "scapula-inferior-angle",
  "lowest-rib",
  "natural-waist",
  "omphalion",
  "iliocristale",
  "crest-line-at-spine",
  "posterior-iliac-spine",
  "iliospinale",
  "buttock-point",
  "trochanterion",
  "floor",
] as const;

/** One of {@link landmarkIds}. */
export type LandmarkId = (typeof landmarkIds)[number];
