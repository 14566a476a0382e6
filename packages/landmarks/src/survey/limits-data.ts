import type { DimensionId } from "../dimension-id.ts";

/**
 * The limits in millimetres as they come out of `limitRules` and `surveyFigures` (ANSUR II,
 * NATICK/TR-15/007): a child's lower limit, an adult's lower limit, and everybody's upper limit. They stand
 * here ready-made, so that a program that checks readings carries no survey; a test works them out anew.
 */
export const limitsMm: Readonly<Record<DimensionId, readonly [child: number, adult: number, to: number]>> = {
  "torso-length": [200, 290, 610],
  "hip-belt-girth": [350, 510, 1910],
  "hip-girth": [430, 620, 1880],
  "waist-girth": [350, 510, 1910],
  "chest-girth": [440, 640, 2060],
  "underbust-girth": [350, 510, 2060],
  stature: [880, 1260, 2200],
  "shoulder-breadth": [170, 250, 540],
  "bideltoid-breadth": [210, 300, 900],
  "shoulder-length": [60, 90, 210],
  "back-waist-length": [210, 310, 660],
  "cervicale-height": [740, 1060, 1890],
  "iliac-crest-height": [510, 730, 1380],
  "neck-base-girth": [200, 290, 770],
  "interscye-breadth": [150, 220, 790],
  "suprasternale-height": [710, 1020, 1810],
};
