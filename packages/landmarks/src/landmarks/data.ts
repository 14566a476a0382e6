import type { Landmark } from "../landmark-entry.ts";
import { chestLandmarks } from "./chest.ts";
import { endLandmarks } from "./ends.ts";
import { neckLandmarks } from "./neck.ts";
import { pelvisLandmarks } from "./pelvis.ts";
import { shoulderLandmarks } from "./shoulder.ts";
import { waistLandmarks } from "./waist.ts";

/** Every landmark of the guide, in groups: ends of the body, neck, shoulder, chest, waist, pelvis. */
export const landmarks: readonly Landmark[] = [
  ...endLandmarks,
  ...neckLandmarks,
  ...shoulderLandmarks,
  ...chestLandmarks,
  ...waistLandmarks,
  ...pelvisLandmarks,
];
