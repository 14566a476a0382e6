import type { Choice } from "./choice.ts";
import type { Inquiry } from "./inquiry.ts";
import type { PlainReason } from "./reason.ts";

/** What the chart, or what was read, leaves open about a choice. */
export function explainChart(choice: Choice, { person }: Inquiry): readonly PlainReason[] {
  const { known, charted } = choice;
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
  for (const dimension of charted) {
    if (!known.some((one) => one.charted === dimension)) {
      reasons.push({ code: "dimension-not-read", facts: { dimension } });
    }
  }
  if (person.prior !== undefined && known.some(({ belief }) => belief.from === "readings-and-prior")) {
    reasons.push({ code: "prior-used", facts: { label: person.prior.label } });
  }
  return reasons;
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
