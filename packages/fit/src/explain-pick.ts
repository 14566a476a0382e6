import type { Choice } from "./choice.ts";
import type { Inquiry } from "./inquiry.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";
import type { Settled } from "./settle.ts";

/** Why the picked size stands before the others. */
export function explainPick(choice: Choice, { policy }: Inquiry): readonly PlainReason[] {
  const { pick, best, reasons } = choice.settled;
  // A size that something beside its fit was picked for has its probability in that reason.
  const byFit = pick === best ? [explainBest(choice.settled, policy)] : [];
  return [...byFit, ...reasons, ...explainCapacity(choice)];
}

function explainBest({ pick, other }: Settled, policy: FitPolicy): PlainReason {
  const { size, probability: fitProbability, expectedMisfitMm: misfitMm } = pick;
  if (fitProbability < policy.hopelessProbability) return { code: "nearest-size", facts: { size, misfitMm } };
  if (other !== undefined && Math.abs(fitProbability - other.probability) < ROUNDING) {
    return { code: "equal-chance", facts: { size, other: other.size, fitProbability } };
  }
  return { code: "most-probable", facts: { size, fitProbability } };
}

/** Two ways to the same figure may differ in their last digits. */
const ROUNDING = 1e-9;

function explainCapacity({ settled: { pick, other }, plain }: Choice): readonly PlainReason[] {
  const isOpen = plain.verdict === "two-sizes-fit" || plain.verdict === "between-sizes";
  const sizeLitres = pick.capacityLitres;
  const otherLitres = other?.capacityLitres;
  if (!isOpen || other === undefined || sizeLitres === undefined || otherLitres === undefined) return [];
  if (sizeLitres === otherLitres) return [];
  const facts = { size: pick.size, other: other.size, sizeLitres, otherLitres };
  return [{ code: "capacity-differs", facts }];
}
