import type { Interval } from "@tapewise/intervals";
import type { Circumstances } from "./circumstances.ts";
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
    const main = judged[0];
    const interval = main === undefined ? undefined : intervalOf(pick, main.charted);
    if (reason.code !== "room-on-both-sides") reasons.push(reason);
    else if (main !== undefined && interval !== undefined)
      reasons.push(...withRoom(reason, interval, main.belief.meanMm));
  }
  return [...reasons, ...explainMisfit(circumstances), ...explainCapacity(pick, other, circumstances)];
}

function withRoom(reason: PlainReason, interval: Interval, meanMm: number): readonly PlainReason[] {
  const belowMm = meanMm - interval.from;
  const aboveMm = interval.to - meanMm;
  // An open end has no room that could be told, and a mean outside the interval has none.
  if (!Number.isFinite(belowMm) || !Number.isFinite(aboveMm) || belowMm < 0 || aboveMm < 0) return [];
  return [{ ...reason, facts: { ...reason.facts, belowMm, aboveMm } }];
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

function intervalOf(fit: SizeFit, dimension: string): Interval | undefined {
  return fit.dimensions.find((one) => one.dimension === dimension)?.range.interval;
}

function dimensionProbability(fit: SizeFit, dimension: string): number | undefined {
  return fit.dimensions.find((one) => one.dimension === dimension)?.probability;
}
