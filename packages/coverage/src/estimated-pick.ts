import { defaultPolicy, holdAgainst } from "@tapewise/fit";
import type { Interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";

/** What a person knows of a dimension. */
export interface Measured {
  readonly dimension: DimensionId;
  readonly meanMm: number;
  readonly uncertaintyMm: number;
}

/** A size that may be picked. */
export interface Pickable {
  readonly name: string;
  readonly box: { readonly [D in DimensionId]?: Interval };
  readonly main: Interval;
}

interface Fit {
  readonly place: number;
  readonly probability: number;
  readonly misfitMm: number;
  readonly room: number;
}

/**
 * The place of the size that a choice gives to somebody whose dimensions are estimated: the most probable one; where
 * none is likely that with the smallest expected misfit; then the roomiest, then the first by name. Errors of
 * different dimensions are independent and normal.
 */
export function estimatedPick(measured: readonly Measured[], sizes: readonly Pickable[]): number {
  const fits = sizes.map(({ box, main }, place): Fit => {
    let [probability, misfitMm] = [1, 0];
    for (const { dimension, meanMm, uncertaintyMm } of measured) {
      const range = box[dimension];
      if (range === undefined) continue;
      const length = { meanMm, sdMm: uncertaintyMm, degreesOfFreedom: Number.POSITIVE_INFINITY };
      const { inside, expectedMisfitMm } = holdAgainst(length, range);
      probability *= inside;
      misfitMm += expectedMisfitMm;
    }
    const at = measured[0]?.meanMm ?? 0;
    return { place, probability, misfitMm, room: Math.min(at - main.from, main.to - at) };
  });
  const [first] = fits;
  return fits.reduce((best, fit) => (isBetter(fit, best, sizes) ? fit : best), first ?? NOTHING).place;
}

const NOTHING: Fit = { place: 0, probability: 0, misfitMm: 0, room: 0 };

function isBetter(a: Fit, b: Fit, sizes: readonly Pickable[]): boolean {
  const standing = ({ probability }: Fit): number =>
    probability < defaultPolicy.hopelessProbability ? 0 : steps(probability);
  const order =
    standing(a) - standing(b) ||
    steps(b.misfitMm) - steps(a.misfitMm) ||
    steps(a.probability) - steps(b.probability) ||
    compareRooms(a.room, b.room);
  return order > 0 || (order === 0 && (sizes[a.place]?.name ?? "") < (sizes[b.place]?.name ?? ""));
}

/** In billionths: what is alike but for rounding must not be ranked by it. */
function steps(value: number): number {
  return Math.round(value * 1e9);
}

function compareRooms(a: number, b: number): number {
  const [one, other] = [Math.round(a * 1e6), Math.round(b * 1e6)];
  return one === other ? 0 : one - other;
}
