import type { SizeChart } from "@tapewise/charts";
import type { DimensionId } from "@tapewise/landmarks";
import type { Choice } from "./choice.ts";
import type { Inquiry } from "./inquiry.ts";
import { type Judgeable, judgeSizes } from "./judge-sizes.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import { rankSizes } from "./rank-sizes.ts";
import type { PlainReason } from "./reason.ts";
import type { SizeFit } from "./recommendation.ts";
import { settle } from "./settle.ts";

/** A chart that says "hip" and not which, where both girths were read: what the other one would change. */
export function explainOtherGirth(choice: Choice, inquiry: Inquiry): readonly PlainReason[] {
  const { chart, judged, settled, belt } = choice;
  const { person, policy } = inquiry;
  const pack = explainPart(chart.sizes, judged, settled.pick, inquiry, (fits, main) => {
    return settle(rankSizes(fits, main, policy), chart, person.build ?? [], main, policy)?.pick;
  });
  if (belt === undefined) return pack;
  return [...pack, ...explainBelt(chart, belt.judged, belt.pick, inquiry)];
}

function explainBelt(
  chart: SizeChart,
  judged: readonly JudgedDimension[],
  pick: SizeFit,
  inquiry: Inquiry,
): readonly PlainReason[] {
  return explainPart(chart.belts, judged, pick, inquiry, (fits, main) => {
    return rankSizes(fits, main, inquiry.policy)[0];
  });
}

function explainPart(
  sizes: readonly Judgeable[],
  judged: readonly JudgedDimension[],
  pick: SizeFit,
  { beliefs, policy }: Inquiry,
  pickFrom: (fits: readonly SizeFit[], main: JudgedDimension) => SizeFit | undefined,
): readonly PlainReason[] {
  const used = judged.find(({ charted }) => charted === "unstated-hip-girth")?.belief;
  const other = used === undefined ? undefined : beliefs.of(otherGirth(used.dimension));
  if (used?.estimate === undefined || other?.estimate === undefined) return [];
  const changed = judged.map((one) =>
    one.belief === used && one.charted === "unstated-hip-girth" ? { ...one, belief: other } : one,
  );
  const [main] = changed;
  if (main === undefined) return [];
  const { fits } = judgeSizes(sizes, changed, beliefs);
  const otherPick = pickFrom(fits, main);
  const facts = { dimension: used.dimension, otherDimension: other.dimension, size: pick.size };
  if (otherPick !== undefined && otherPick.size !== pick.size) {
    return [{ code: "other-girth-picks", facts: { ...facts, other: otherPick.size } }];
  }
  const otherProbability = otherPick?.dimensions.find(
    ({ dimension }) => dimension === "unstated-hip-girth",
  )?.probability;
  if (otherProbability === undefined || otherProbability >= policy.fitProbability) return [];
  return [{ code: "other-girth-unlikely", facts: { ...facts, otherProbability } }];
}

/** The two girths that a maker may mean. */
function otherGirth(dimension: DimensionId): DimensionId {
  return dimension === "hip-belt-girth" ? "hip-girth" : "hip-belt-girth";
}
