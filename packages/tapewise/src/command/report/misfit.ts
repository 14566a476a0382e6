import type { ChartDimension } from "@tapewise/charts";
import type { FitPolicy, OutsideRange, Reason, Recommendation, SizeFit } from "@tapewise/fit";

/** What keeps a choice from being a clear one: the pack, or else a hip belt that is sized separately. */
export type Misfit =
  | { readonly kind: "beyond"; readonly outside: OutsideRange }
  | { readonly kind: "disagree"; readonly dimensions: readonly ChartDimension[] }
  | (Rival & { readonly kind: "toss-up"; readonly dimension?: ChartDimension })
  | { readonly kind: "border"; readonly dimension: ChartDimension; readonly other: string }
  | { readonly kind: "unlikely" }
  | (Belt & { readonly kind: "belt-beyond"; readonly outside: OutsideRange })
  | (Belt & Rival & { readonly kind: "belt-toss-up" })
  | (Belt & { readonly kind: "belt-unlikely" });

interface Rival {
  readonly other: string;
  readonly otherProbability: number;
}

interface Belt {
  readonly belt: string;
  readonly beltProbability: number;
}

/** Reasons that say where the pack itself falls short, and not its belt. */
const PACK_MISFITS: ReadonlySet<string> = new Set([
  "dimensions-disagree",
  "between-two-sizes",
  "no-size-likely",
]);

/** What set the verdict of a choice that is between sizes or outside of its chart. */
export function misfitOf(recommendation: Recommendation, policy: FitPolicy): Misfit {
  const { probability, outside, reasons, sizes, pick, belt } = recommendation;
  const reason = reasons.find(({ code }) => PACK_MISFITS.has(code));
  // A belt counts only where the pack fits, and a pack that fits is beyond no end of its chart.
  if (belt !== undefined && reason === undefined && probability >= policy.fitProbability) {
    return beltMisfit(belt, outside, policy);
  }
  if (outside !== undefined) return { kind: "beyond", outside };
  if (reason?.code === "dimensions-disagree") {
    const quarrel = [reason.facts.dimension, reason.facts.otherDimension];
    const judged =
      sizes.find(({ size }) => size === pick)?.dimensions.map(({ dimension }) => dimension) ?? [];
    return { kind: "disagree", dimensions: judged.filter((dimension) => quarrel.includes(dimension)) };
  }
  const border = reason?.code === "between-two-sizes" ? reason : undefined;
  const rival = rivalOf(pick, sizes, policy);
  if (rival !== undefined) {
    const isBorder = border?.facts.other === rival.other;
    return {
      kind: "toss-up",
      ...rival,
      ...(isBorder ? { dimension: dimensionIn(border) } : {}),
    };
  }
  if (border === undefined) return { kind: "unlikely" };
  return { kind: "border", dimension: dimensionIn(border), other: String(border.facts.other) };
}

function beltMisfit(
  belt: NonNullable<Recommendation["belt"]>,
  outside: OutsideRange | undefined,
  policy: FitPolicy,
): Misfit {
  const about = { belt: belt.pick, beltProbability: belt.probability };
  if (outside !== undefined) return { kind: "belt-beyond", ...about, outside };
  const rival = rivalOf(belt.pick, belt.sizes, policy);
  return rival === undefined
    ? { kind: "belt-unlikely", ...about }
    : { kind: "belt-toss-up", ...about, ...rival };
}

/** Another size that is about as likely as the pick, where one of the two is likelier than not. */
function rivalOf(pick: string, sizes: readonly SizeFit[], policy: FitPolicy): Rival | undefined {
  const own = sizes.find(({ size }) => size === pick)?.probability ?? 0;
  const [other] = sizes.filter(({ size }) => size !== pick).toSorted((a, b) => b.probability - a.probability);
  if (other === undefined || Math.abs(own - other.probability) > policy.tieLoss) return undefined;
  if (own + other.probability < policy.fitProbability) return undefined;
  return { other: other.size, otherProbability: other.probability };
}

function dimensionIn({ facts }: Reason): ChartDimension {
  // A fact of this name holds the id of a dimension of the chart.
  return String(facts.dimension) as ChartDimension;
}
