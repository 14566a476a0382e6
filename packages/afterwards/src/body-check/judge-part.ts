import type { UncertainLength } from "@tapewise/fit";
import { evidenceDefaults } from "../evidence/data.ts";
import { partDimensions } from "../part-dimensions.ts";
import type { CheckedPart } from "./body-check-item.ts";
import type { BodyCheckSetup, GivenAnswer, SeenSize } from "./body-check-state.ts";
import { findItem, meaningOf } from "./find-item.ts";
import { type RangedSize, rangedSizes, type Sight, weighSizes } from "./weigh-sizes.ts";

/** What was seen of one part. */
export interface PartSeen {
  readonly part: CheckedPart;
  readonly sights: readonly Sight[];
  /** The side on which the body was seen to be, where any answer names one. */
  readonly side?: "below" | "above";
}

/** How what was seen of a part stands against the chart. */
export interface PartWeighed {
  /** The name of the worn one. */
  readonly worn: string;
  /** How likely every one in the chart fits; empty where the chart does not size by it. */
  readonly sizes: readonly SeenSize[];
  /** Those on the side that was seen: made for longer, or larger, bodies than the worn one; or for shorter ones. */
  readonly candidates: readonly SeenSize[];
}

/** What answers say of a part; contradictions among them were asked about before. */
export function seePart(answers: readonly GivenAnswer[], part: CheckedPart): PartSeen {
  const sights = answers.flatMap((given): readonly Sight[] => {
    const { says } = meaningOf(given);
    const { doubtMm } = findItem(given.item);
    return says?.part === part && doubtMm !== undefined ? [{ side: says.side, doubtMm }] : [];
  });
  const side = sights.find((one) => one.side !== "inside")?.side;
  return { part, sights, ...(side === undefined || side === "inside" ? {} : { side }) };
}

/** Weighs what was seen of a part against the chart. */
export function weighPart(setup: BodyCheckSetup, { part, sights, side }: PartSeen): PartWeighed {
  const { worn, sizes } = chartedPart(setup, part);
  const range = sizes.find(({ name }) => name === worn)?.interval;
  const known = part === "harness" ? setup.length : setup.girth;
  const belief = withDoubt(known ?? vague(range), setup, part);
  const weighed = range === undefined || belief === undefined ? [] : weighSizes(belief, range, sizes, sights);
  return {
    worn,
    sizes: weighed,
    candidates: weighed.filter((_, place) => {
      const other = sizes[place]?.interval;
      if (other === undefined || range === undefined) return false;
      const [from, to] = [compare(other.from, range.from), compare(other.to, range.to)];
      return side === "above" ? from + to > 0 : from + to < 0;
    }),
  };
}

/** The sign of the difference, which two open ends have none of. */
function compare(a: number, b: number): number {
  return Number(a > b) - Number(a < b);
}

function chartedPart(
  setup: BodyCheckSetup,
  part: CheckedPart,
): { worn: string; sizes: readonly RangedSize[] } {
  const { chart, size, belt } = setup;
  const isApart = part === "belt" && belt !== undefined;
  const worn = isApart ? belt : size;
  const holders = isApart ? chart.belts : chart.sizes;
  for (const dimension of partDimensions[part]) {
    const sizes = rangedSizes(holders, dimension);
    if (sizes.some(({ name }) => name === worn)) return { worn, sizes };
  }
  return { worn, sizes: [] };
}

/** The body as seen from a chart that may be off, which moves all of its sizes alike. */
function withDoubt(
  belief: UncertainLength | undefined,
  { chartDoubtMm }: BodyCheckSetup,
  part: CheckedPart,
): UncertainLength | undefined {
  if (belief === undefined) return undefined;
  const { asPrintedProbability, backLength, girth } = evidenceDefaults;
  const { makerOffsetSdMm, productOffsetSdMm } = part === "harness" ? backLength : girth;
  const stated = part === "harness" ? chartDoubtMm?.length : chartDoubtMm?.girth;
  // Over both possibilities: that the charts of a maker are as printed, and that they are not.
  const assumed = Math.sqrt(1 - asPrintedProbability) * Math.hypot(makerOffsetSdMm, productOffsetSdMm);
  const doubtMm = stated ?? assumed;
  return { ...belief, sdMm: Math.hypot(belief.sdMm, doubtMm) };
}

/** A length or a girth that nothing is known of: around the middle of the range that is worn, as wide as it. */
function vague(range: RangedSize["interval"] | undefined): UncertainLength | undefined {
  if (range === undefined) return undefined;
  const { from, to } = range;
  if (!(Number.isFinite(from) && Number.isFinite(to))) return undefined;
  return { meanMm: from + (to - from) / 2, sdMm: to - from, degreesOfFreedom: Number.POSITIVE_INFINITY };
}
