import type { SizeChart, SizeRanges } from "@tapewise/charts";
import { type Interval, interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { type EmpiricalJoint, empiricalJoint, type NormalJoint, normalJoint } from "@tapewise/population";

const about = { label: "an invented crew", source: "invented", caveat: "for tests only" };

/** Torso lengths with mean 430 mm and standard deviation 25 mm, and hip girths with 1000 and 80 mm. */
export function crew(correlation = 0): NormalJoint {
  return normalJoint({
    about,
    variables: ["torso-length", "hip-girth"],
    mean: [430, 1000],
    covariance: [
      [625, correlation * 2000],
      [correlation * 2000, 6400],
    ],
  });
}

/** People with the given torso lengths. */
export function counted(lengths: readonly number[]): EmpiricalJoint {
  return empiricalJoint({ about, variables: ["torso-length"], people: lengths.map((mm) => [mm]) });
}

/** A hundred people, one in each millimetre from 400 to 500. */
export function uniform(): EmpiricalJoint {
  return counted(Array.from({ length: 100 }, (_, k) => 400.5 + k));
}

/** A chart of sizes with ranges in mm. */
export function chartOf(
  sizes: Readonly<Record<string, { readonly [D in DimensionId]?: Interval }>>,
  more: Partial<SizeChart> = {},
): SizeChart {
  return {
    chart: "Doily 45",
    swappable: [],
    sizes: Object.entries(sizes).map(([name, box]) => ({ name, covers: [name], ranges: rangesOf(box) })),
    belts: [],
    ...more,
  };
}

/** The same for torso lengths alone. */
export function torsoChart(sizes: Readonly<Record<string, readonly [from: number, to: number]>>): SizeChart {
  return chartOf(
    Object.fromEntries(
      Object.entries(sizes).map(([name, [from, to]]) => [name, { "torso-length": interval(from, to) }]),
    ),
  );
}

/** Ranges as a chart states them. */
export function rangesOf(box: { readonly [D in DimensionId]?: Interval }): SizeRanges {
  return Object.fromEntries(
    Object.entries(box).map(([dimension, range]) => [
      dimension,
      { interval: range, basis: "range", stated: [] },
    ]),
  );
}
