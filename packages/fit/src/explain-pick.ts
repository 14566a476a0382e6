import type { Circumstances } from "./circumstances.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { SizeFit } from "./recommendation.ts";
import type { PlainReason } from "./settle.ts";

/** Why the picked size stands before the others. */
export function explainPick(circumstances: Circumstances): readonly PlainReason[] {
  const { settled, judged } = circumstances;
  const { pick, other } = settled;
  const reasons: PlainReason[] = [
    { code: "most-probable", facts: { size: pick.size, fitProbability: pick.probability } },
  ];
  for (const reason of settled.reasons) {
    if (reason.code !== "room-on-both-sides") reasons.push(reason);
    else if (other !== undefined) reasons.push(...withRoom(reason, pick, other, judged[0]));
  }
  return [...reasons, ...explainMisfit(circumstances), ...explainCapacity(pick, other, circumstances)];
}

/** The reason with its figures; nothing where the expected length lies in only one of the two, or no end is near. */
function withRoom(
  reason: PlainReason,
  pick: SizeFit,
  other: SizeFit,
  main: JudgedDimension | undefined,
): readonly PlainReason[] {
  if (main === undefined) return [];
  const roomMm = roomIn(pick, main);
  const otherRoomMm = roomIn(other, main);
  if (!(otherRoomMm >= 0 && roomMm > otherRoomMm && Number.isFinite(roomMm))) return [];
  return [{ ...reason, facts: { ...reason.facts, dimension: main.charted, roomMm, otherRoomMm } }];
}

/** Distance from the expected length to the nearer end, in mm; negative outside, infinite without an end. */
function roomIn(fit: SizeFit, { charted, belief }: JudgedDimension): number {
  const interval = fit.dimensions.find((one) => one.dimension === charted)?.range.interval;
  if (interval === undefined) return Number.POSITIVE_INFINITY;
  return Math.min(belief.meanMm - interval.from, interval.to - belief.meanMm);
}

function explainMisfit({ settled, plain, judged }: Circumstances): readonly PlainReason[] {
  const { pick, other } = settled;
  if (plain.verdict === "outside-the-range" && plain.outside !== undefined) {
    const { dimension, end, byMm, probability } = plain.outside;
    const facts = { dimension, side: end, byMm, outsideProbability: probability, size: pick.size };
    return [{ code: "beyond-the-chart", facts }];
  }
  if (plain.verdict !== "between-sizes" || other === undefined) return [];
  const main = judged[0];
  const quarrel = pick.dimensions
    .filter((one) => one.dimension !== main?.charted)
    .find((one) => one.probability < 0.5 && (dimensionProbability(other, one.dimension) ?? 0) >= 0.5);
  if (main !== undefined && quarrel !== undefined && (dimensionProbability(pick, main.charted) ?? 0) >= 0.5) {
    const facts = {
      dimension: quarrel.dimension,
      other: other.size,
      size: pick.size,
      mainDimension: main.charted,
    };
    return [{ code: "dimensions-disagree", facts }];
  }
  const facts = { size: pick.size, other: other.size, misfitMm: pick.expectedMisfitMm };
  return [{ code: "between-two-sizes", facts }];
}

function explainCapacity(
  pick: SizeFit,
  other: SizeFit | undefined,
  { plain }: Circumstances,
): readonly PlainReason[] {
  const isOpen = plain.verdict === "two-sizes-fit" || plain.verdict === "between-sizes";
  const { capacityLitres: sizeLitres } = pick;
  const otherLitres = other?.capacityLitres;
  if (!isOpen || other === undefined || sizeLitres === undefined || otherLitres === undefined) return [];
  if (sizeLitres === otherLitres) return [];
  return [
    { code: "capacity-differs", facts: { size: pick.size, other: other.size, sizeLitres, otherLitres } },
  ];
}

function dimensionProbability(fit: SizeFit, dimension: string): number | undefined {
  return fit.dimensions.find((one) => one.dimension === dimension)?.probability;
}
