import type { Circumstances } from "./circumstances.ts";
import type { PlainReason } from "./settle.ts";

/** What the chart, or what was read, leaves open about a choice. */
export function explainChart(circumstances: Circumstances): readonly PlainReason[] {
  const { chart, person, settled, known, charted } = circumstances;
  const size = chart.sizes.find((one) => one.name === settled.pick.size);
  const reasons: PlainReason[] = [];
  if (settled.pick.dimensions.some((one) => one.range.basis === "nominal")) {
    reasons.push({ code: "nominal-length-inferred", facts: { size: settled.pick.size } });
  }
  if (size !== undefined && size.covers.length > 1) {
    reasons.push({ code: "double-size", facts: { size: size.name, covers: size.covers.join(" and ") } });
  }
  for (const { charted: dimension, belief } of known) {
    if (dimension === "unstated-hip-girth") {
      reasons.push({ code: "girth-not-stated", facts: { dimension: belief.dimension } });
    }
    if (belief.from === "prior") reasons.push({ code: "dimension-from-prior", facts: { dimension } });
  }
  for (const dimension of charted) {
    if (!known.some((one) => one.charted === dimension)) {
      reasons.push({ code: "dimension-not-read", facts: { dimension } });
    }
  }
  if (person.prior !== undefined && known.some(({ belief }) => belief.from !== "readings")) {
    reasons.push({ code: "prior-used", facts: { label: person.prior.label } });
  }
  return reasons;
}
