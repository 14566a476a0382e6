import type { DimensionId } from "@tapewise/landmarks";
import type { Choice } from "./choice.ts";
import { explainOtherGirth } from "./explain-other-girth.ts";
import type { Inquiry } from "./inquiry.ts";
import type { Person } from "./person.ts";
import { rankCut } from "./rank-cut.ts";
import type { PlainReason } from "./reason.ts";

/** What the chart, or what was read, leaves open about a choice. */
export function explainChart(choice: Choice, inquiry: Inquiry): readonly PlainReason[] {
  const { known, charted, chart } = choice;
  const { person } = inquiry;
  const reasons: PlainReason[] = [...explainSize(choice)];
  for (const { charted: dimension, belief } of known) {
    if (dimension === "unstated-hip-girth") {
      reasons.push({ code: "girth-not-stated", facts: { dimension: belief.dimension } });
    }
    if (belief.from === "prior" && person.prior !== undefined) {
      const { label } = person.prior;
      reasons.push({ code: "dimension-from-prior", facts: { dimension: belief.dimension, label } });
    }
  }
  reasons.push(...explainOtherGirth(choice, inquiry));
  for (const dimension of charted) {
    if (!known.some((one) => one.charted === dimension)) {
      reasons.push({ code: "dimension-not-read", facts: { dimension } });
    }
  }
  for (const { dimension } of person.estimates) {
    if (isUncharted(dimension, choice, person))
      reasons.push({ code: "dimension-not-charted", facts: { dimension } });
  }
  if (rankCut(person.cut, chart.cut) === 0) {
    reasons.push({ code: "cut-differs", facts: { cut: String(chart.cut), own: String(person.cut) } });
  }
  if (person.prior !== undefined && known.some(({ belief }) => belief.from === "readings-and-prior")) {
    reasons.push({ code: "prior-used", facts: { label: person.prior.label } });
  }
  return reasons;
}

/**
 * Whether a dimension that was read is none that the chart states. A stature beside a prior is what the prior was
 * made for, and of the two girths that "hip" may mean each has its say elsewhere.
 */
function isUncharted(dimension: DimensionId, { charted }: Choice, { prior }: Person): boolean {
  if (charted.includes(dimension) || (dimension === "stature" && prior !== undefined)) return false;
  const isHip = dimension === "hip-belt-girth" || dimension === "hip-girth";
  return !(isHip && charted.includes("unstated-hip-girth"));
}

/** What the chart leaves open about the picked size. */
function explainSize({ chart, judged, settled: { pick } }: Choice): readonly PlainReason[] {
  const size = chart.sizes.find((one) => one.name === pick.size);
  const reasons: PlainReason[] = [];
  if (pick.dimensions.some((one) => one.range.basis === "nominal")) {
    reasons.push({ code: "nominal-length-inferred", facts: { size: pick.size } });
  }
  for (const { charted: dimension } of judged) {
    if (!pick.dimensions.some((one) => one.dimension === dimension)) {
      reasons.push({ code: "dimension-not-stated", facts: { size: pick.size, dimension } });
    }
  }
  if (size !== undefined && size.covers.length > 1) {
    reasons.push({ code: "double-size", facts: { size: size.name, covers: size.covers.join(" and ") } });
  }
  return reasons;
}
