import type { Choice } from "./choice.ts";
import type { Inquiry } from "./inquiry.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";
import type { SizeFit } from "./recommendation.ts";

/** Why the picked size stands before the others. */
export function explainPick(choice: Choice, { policy }: Inquiry): readonly PlainReason[] {
  const { pick, best, reasons } = choice.settled;
  // A size that something beside its fit was picked for has its probability in that reason.
  const byFit = pick === best ? [explainBest(pick, policy)] : [];
  return [...byFit, ...reasons, ...explainCapacity(choice)];
}

function explainBest(best: SizeFit, policy: FitPolicy): PlainReason {
  const { size, probability, expectedMisfitMm } = best;
  return probability < policy.hopelessProbability
    ? { code: "nearest-size", facts: { size, misfitMm: expectedMisfitMm } }
    : { code: "most-probable", facts: { size, fitProbability: probability } };
}

function explainCapacity({ settled: { pick, other }, plain }: Choice): readonly PlainReason[] {
  const isOpen = plain.verdict === "two-sizes-fit" || plain.verdict === "between-sizes";
  const sizeLitres = pick.capacityLitres;
  const otherLitres = other?.capacityLitres;
  if (!isOpen || other === undefined || sizeLitres === undefined || otherLitres === undefined) return [];
  if (sizeLitres === otherLitres) return [];
  const facts = { size: pick.size, other: other.size, sizeLitres, otherLitres };
  return [{ code: "capacity-differs", facts }];
}
