import { type Recommendation, writePercent } from "@tapewise/fit";

/** The chance that a pack fits, a hip belt that is sized separately included: what packs are ranked by. */
export function jointChance({ probability, belt }: Recommendation): number {
  return probability * (belt?.probability ?? 1);
}

/** "a 55 % chance to fit" */
export function chanceToFit(probability: number): string {
  const percent = writePercent(probability);
  if (!/^\d/.test(percent)) return `a chance of ${percent} to fit`;
  return `${/^(?:8|11 |18 )/.test(percent) ? "an" : "a"} ${percent} chance to fit`;
}
