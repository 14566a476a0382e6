import { fc } from "@fast-check/vitest";
import type { SizeChart } from "@tapewise/charts";
import { interval } from "@tapewise/intervals";
import { type EmpiricalJoint, empiricalJoint, type NormalJoint, normalJoint } from "@tapewise/population";

const about = { label: "an invented crew", source: "invented", caveat: "for tests only" };

/** One size: its ends in mm, and those of its hip girth where it states one. */
export interface DrawnSize {
  readonly torso: readonly [from: number, to: number];
  readonly hip?: readonly [from: number, to: number];
}

/** A range of a length, in whole mm. */
function range(low: number, high: number, most: number): fc.Arbitrary<readonly [number, number]> {
  return fc
    .tuple(fc.integer({ min: low, max: high }), fc.integer({ min: 0, max: most }))
    .map(([from, width]) => [from, from + width] as const);
}

const torso = range(330, 520, 90);
const size: fc.Arbitrary<DrawnSize> = fc.oneof(
  torso.map((one) => ({ torso: one })),
  fc.record({ torso, hip: range(800, 1100, 200) }),
);

/** One to five sizes, some of which overlap, touch, or leave gaps. */
export const sizesArbitrary: fc.Arbitrary<readonly DrawnSize[]> = fc.array(size, {
  minLength: 1,
  maxLength: 5,
});

/** Sizes by torso length alone. */
export const torsoSizesArbitrary: fc.Arbitrary<readonly DrawnSize[]> = fc.array(
  torso.map((one) => ({ torso: one })),
  { minLength: 1, maxLength: 5 },
);

/** A chart of drawn sizes, called A, B, C … */
export function drawnChart(sizes: readonly DrawnSize[], chart = "Doily 45"): SizeChart {
  return {
    chart,
    swappable: [],
    belts: [],
    sizes: sizes.map(({ torso: [from, to], hip }, n) => {
      const name = String.fromCharCode(65 + n);
      return {
        name,
        covers: [name],
        ranges: {
          "torso-length": { interval: interval(from, to), basis: "range" as const, stated: [] },
          ...(hip === undefined
            ? {}
            : { "hip-girth": { interval: interval(...hip), basis: "range" as const, stated: [] } }),
        },
      };
    }),
  };
}

/** People whose torso length and hip girth are jointly normal. */
export const normalArbitrary: fc.Arbitrary<NormalJoint> = fc
  .record({
    torso: fc.integer({ min: 390, max: 470 }),
    torsoSd: fc.integer({ min: 15, max: 40 }),
    hip: fc.integer({ min: 900, max: 1100 }),
    hipSd: fc.integer({ min: 40, max: 100 }),
    correlation: fc.integer({ min: -9, max: 9 }).map((tenths) => tenths / 10),
  })
  .map(({ torso, torsoSd, hip, hipSd, correlation }) => {
    const shared = correlation * torsoSd * hipSd;
    return normalJoint({
      about,
      variables: ["torso-length", "hip-girth"],
      mean: [torso, hip],
      covariance: [
        [torsoSd ** 2, shared],
        [shared, hipSd ** 2],
      ],
    });
  });

/** People who were counted, in whole mm, so that some stand on the ends of sizes. */
export const countedArbitrary: fc.Arbitrary<EmpiricalJoint> = fc
  .array(fc.tuple(fc.integer({ min: 340, max: 560 }), fc.integer({ min: 800, max: 1200 })), {
    minLength: 1,
    maxLength: 40,
  })
  .map((people) => empiricalJoint({ about, variables: ["torso-length", "hip-girth"], people }));
