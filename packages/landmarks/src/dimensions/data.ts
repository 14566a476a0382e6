import type { DimensionGuide } from "../dimension-entry.ts";
import { backWaistLength } from "./back-waist-length.ts";
import { bideltoidBreadth } from "./bideltoid-breadth.ts";
import { cervicaleHeight } from "./cervicale-height.ts";
import { chestGirth } from "./chest-girth.ts";
import { hipBeltGirth } from "./hip-belt-girth.ts";
import { hipGirth } from "./hip-girth.ts";
import { iliacCrestHeight } from "./iliac-crest-height.ts";
import { interscyeBreadth } from "./interscye-breadth.ts";
import { neckBaseGirth } from "./neck-base-girth.ts";
import { shoulderBreadth } from "./shoulder-breadth.ts";
import { shoulderLength } from "./shoulder-length.ts";
import { stature } from "./stature.ts";
import { suprasternaleHeight } from "./suprasternale-height.ts";
import { torsoLength } from "./torso-length.ts";
import { underbustGirth } from "./underbust-girth.ts";
import { waistGirth } from "./waist-girth.ts";

/** The guides, in the order of the dimension ids. */
export const dimensionGuides: readonly DimensionGuide[] = [
  torsoLength,
  hipBeltGirth,
  hipGirth,
  waistGirth,
  chestGirth,
  underbustGirth,
  stature,
  shoulderBreadth,
  bideltoidBreadth,
  shoulderLength,
  backWaistLength,
  cervicaleHeight,
  iliacCrestHeight,
  neckBaseGirth,
  interscyeBreadth,
  suprasternaleHeight,
];
