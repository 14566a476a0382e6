import type { ChartDimension } from "@tapewise/charts";
import { contains } from "@tapewise/intervals";
import type { Choice } from "./choice.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { PlainReason } from "./reason.ts";
import type { OutsideRange, SizeFit } from "./recommendation.ts";
import type { Settled } from "./settle.ts";

/** Where the best that the chart has falls short. Nothing where it fits. */
export function explainMisfit(choice: Choice): readonly PlainReason[] {
  return [...explainPack(choice), ...explainBelt(choice)];
}

function explainPack(choice: Choice): readonly PlainReason[] {
  const { plain, settled } = choice;
  if (plain.outside !== undefined) return [beyond(plain.outside)];
  if (plain.verdict !== "between-sizes") return [];
  return [findQuarrel(choice) ?? findBorder(settled) ?? weakestPoint(settled.pick)];
}

function explainBelt({ belt }: Choice): readonly PlainReason[] {
  if (belt === undefined) return [];
  const { plain, pick } = belt;
  if (plain.outside !== undefined) return [beyond(plain.outside), beltUnlikely(pick)];
  return plain.verdict === "between-sizes" ? [beltUnlikely(pick)] : [];
}

function beyond({ dimension, end, byMm, probability }: OutsideRange): PlainReason {
  return { code: "beyond-the-chart", facts: { dimension, side: end, byMm, outsideProbability: probability } };
}

function beltUnlikely({ size, probability }: SizeFit): PlainReason {
  return { code: "belt-unlikely", facts: { belt: size, beltProbability: probability } };
}

/** One dimension that the pick takes and another that only some other size takes, where no size takes both. */
function findQuarrel({ fits, judged, settled: { pick } }: Choice): PlainReason | undefined {
  const suits = (fit: SizeFit, dimension: ChartDimension) => takes(fit, dimension, judged);
  const suited = pick.dimensions.filter((one) => suits(pick, one.dimension));
  const unsuited = pick.dimensions.filter((one) => !suits(pick, one.dimension));
  for (const { dimension } of suited) {
    for (const { dimension: otherDimension } of unsuited) {
      const other = fits.find((fit) => suits(fit, otherDimension));
      const isSolved = fits.some((fit) => suits(fit, dimension) && suits(fit, otherDimension));
      if (other === undefined || isSolved) continue;
      const facts = { dimension, size: pick.size, otherDimension, other: other.size };
      return { code: "dimensions-disagree", facts };
    }
  }
  return undefined;
}

/** A size takes a length that is expected inside; one that it does not state, it takes in any case. */
function takes(fit: SizeFit, dimension: ChartDimension, judged: readonly JudgedDimension[]): boolean {
  const interval = fit.dimensions.find((one) => one.dimension === dimension)?.range.interval;
  const belief = judged.find(({ charted }) => charted === dimension)?.belief;
  return interval === undefined || belief === undefined || contains(interval, belief.meanMm);
}

/** Two neighbours in one dimension, with the body about where they meet or in the gap between them. */
function findBorder({ pick, other }: Settled): PlainReason | undefined {
  for (const own of pick.dimensions) {
    const theirs = other?.dimensions.find((one) => one.dimension === own.dimension);
    if (other === undefined || theirs === undefined) continue;
    const { from, to } = theirs.range.interval;
    const isAbove = from >= own.range.interval.to && own.probabilityAbove >= NEAR_THE_END;
    const isBelow = to <= own.range.interval.from && own.probabilityBelow >= NEAR_THE_END;
    if (!(isAbove || isBelow)) continue;
    const misfits = { misfitMm: own.expectedMisfitMm, otherMisfitMm: theirs.expectedMisfitMm };
    const facts = { dimension: own.dimension, size: pick.size, other: other.size, ...misfits };
    return { code: "between-two-sizes", facts };
  }
  return undefined;
}

/** A dimension lies near an end of a size, or beyond it, when it passes it with this probability. */
const NEAR_THE_END = 0.35;

function weakestPoint(pick: SizeFit): PlainReason {
  const weakest = pick.dimensions.reduce((a, b) => (b.probability < a.probability ? b : a));
  return {
    code: "no-size-likely",
    facts: { size: pick.size, dimension: weakest.dimension, dimensionProbability: weakest.probability },
  };
}
