// Allowable observer errors: V. C. Hotzman et al., 2011, Measurer's Handbook: US Army and Marine Corps
// Anthropometric Surveys, 2010-2011, NATICK/TR-11/017, Appendix G, pp. 225-227; read second-hand. Each is a limit on the
// difference between two readings, not a standard deviation. Only dimensions taken alike are listed: the
// handbook's waist is at the navel, and its back length ends there.
import type { ObserverAllowance } from "./observer-allowance.ts";

/** Published limits on the difference between two readings, in mm. */
export const observerAllowances: readonly ObserverAllowance[] = [
  { dimension: "stature", mm: 6, name: "Stature", source: "ansur-handbook" },
  { dimension: "shoulder-breadth", mm: 8, name: "Biacromial Breadth", source: "ansur-handbook" },
  { dimension: "shoulder-length", mm: 3, name: "Shoulder Length", source: "ansur-handbook" },
  { dimension: "neck-base-girth", mm: 8, name: "Neck Circumference, Base", source: "ansur-handbook" },
  { dimension: "chest-girth", mm: 14, name: "Chest Circumference", source: "ansur-handbook" },
  { dimension: "hip-girth", mm: 12, name: "Buttock Circumference", source: "ansur-handbook" },
];
