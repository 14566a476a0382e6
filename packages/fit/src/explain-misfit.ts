import type { Choice } from "./choice.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { PlainReason } from "./reason.ts";
import type { SizeFit } from "./recommendation.ts";

/** Where the best that the chart has falls short. Nothing where it fits. */
export function explainMisfit(choice: Choice): readonly PlainReason[] {
  return [...explainPack(choice), ...explainBelt(choice)];
}

function explainPack(choice: Choice): readonly PlainReason[] {
  const { plain, settled } = choice;
  if (plain.outside !== undefined) {
    const { dimension, end, byMm, probability } = plain.outside;
    const facts = { dimension, side: end, byMm, outsideProbability: probability };
    return [{ code: "beyond-the-chart", facts }];
  }
  if (plain.verdict !== "between-sizes") return [];
  return [findQuarrel(choice) ?? findBorder(choice) ?? weakestPoint(settled.pick)];
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

/** A size takes a dimension that is likelier inside than not; one that it does not state, it takes in any case. */
function suits(fit: SizeFit, dimension: string): boolean {
  return (fit.dimensions.find((one) => one.dimension === dimension)?.probability ?? 1) >= 0.5;
}

/** Two neighbours in the main dimension, with the body about where they meet or in the gap between them. */
function findBorder({ main, settled: { pick, other } }: Choice): PlainReason | undefined {
  const own = pick.dimensions.find((one) => one.dimension === main.charted);
  const theirs = other?.dimensions.find((one) => one.dimension === main.charted);
  if (other === undefined || own === undefined || theirs === undefined) return undefined;
  const upward = theirs.range.interval.from >= own.range.interval.to;
  const downward = theirs.range.interval.to <= own.range.interval.from;
  if (!(upward || downward) || !isNearEnd(main, own.range.interval, upward)) return undefined;
  const facts = {
    dimension: main.charted,
    size: pick.size,
    other: other.size,
    misfitMm: own.expectedMisfitMm,
  };
  return { code: "between-two-sizes", facts };
}

/** Beyond the end, or inside and not farther from it than the length is unsure. */
function isNearEnd(
  { belief }: JudgedDimension,
  { from, to }: { readonly from: number; readonly to: number },
  upper: boolean,
): boolean {
  return upper ? belief.meanMm >= to - belief.sdMm : belief.meanMm <= from + belief.sdMm;
}

function weakestPoint(pick: SizeFit): PlainReason {
  const weakest = pick.dimensions.reduce((a, b) => (b.probability < a.probability ? b : a));
  return {
    code: "no-size-likely",
    facts: { size: pick.size, dimension: weakest.dimension, dimensionProbability: weakest.probability },
  };
}

function explainBelt({ belt }: Choice): readonly PlainReason[] {
  if (belt === undefined || belt.plain.verdict === "fits" || belt.plain.verdict === "two-sizes-fit")
    return [];
  return [{ code: "belt-unlikely", facts: { belt: belt.pick.size, beltProbability: belt.pick.probability } }];
}
