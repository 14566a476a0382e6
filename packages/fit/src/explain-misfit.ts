import type { Choice } from "./choice.ts";
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

/** One dimension that the pick suits and another that asks for some other size, where no size suits both. */
function findQuarrel({ fits, settled: { pick } }: Choice): PlainReason | undefined {
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

/** A size suits a dimension that is likelier inside than not; one that it does not state, it suits in any case. */
function suits(fit: SizeFit, dimension: string): boolean {
  return (fit.dimensions.find((one) => one.dimension === dimension)?.probability ?? 1) >= 0.5;
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
