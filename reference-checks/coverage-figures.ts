// How many people of ANSUR II (2012 survey of U.S. Army personnel, Gordon et al. 2014, NATICK/TR-15/007; public
// individual data, 4,082 men and 1,986 women) lie below, between and above the edges of a size chart, in mm. An edge
// belongs to the interval above it. Origin: counted exactly in the public data.
import type { DimensionId } from "@tapewise/landmarks";

export interface ChartCount {
  readonly cut: "women" | "men";
  readonly dimension: DimensionId;
  /** The survey's own name. */
  readonly column: string;
  readonly edges: readonly number[];
  /** Below the first edge, in each interval, from the last edge on. */
  readonly counts: readonly number[];
}

export const chartCounts: readonly ChartCount[] = [
  {
    cut: "women",
    dimension: "stature",
    column: "stature",
    edges: [1550, 1600, 1650, 1700, 1750, 1800, 1850],
    counts: [213, 444, 610, 443, 209, 59, 8, 0],
  },
  {
    cut: "men",
    dimension: "hip-girth",
    column: "buttock circumference",
    edges: [880, 920, 960, 1000, 1040, 1080, 1120],
    counts: [106, 274, 503, 791, 864, 698, 447, 399],
  },
  {
    cut: "women",
    dimension: "waist-girth",
    column: "waist circumference, at the navel",
    edges: [700, 750, 800, 850, 900, 950, 1000],
    counts: [70, 170, 330, 400, 346, 304, 176, 190],
  },
  {
    cut: "men",
    dimension: "waist-girth",
    column: "waist circumference, at the navel",
    edges: [700, 750, 800, 850, 900, 950, 1000],
    counts: [11, 103, 314, 509, 594, 667, 655, 1229],
  },
];
