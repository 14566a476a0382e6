import type { Circumstances } from "./circumstances.ts";
import type { NextStepCode } from "./reasons.ts";
import type { PlainReason } from "./settle.ts";

/** What to do next, the most useful first. The checks on the body and the caution always stand last. */
export function explainNext(circumstances: Circumstances): readonly PlainReason<NextStepCode>[] {
  const { look, questions, plain, settled, charted, known, belt } = circumstances;
  const steps: PlainReason<NextStepCode>[] = [];
  for (const question of questions) {
    steps.push({
      code: "check-reading",
      facts: { dimension: String(question.path.at(-1)), question: question.message },
    });
  }
  if (look !== undefined) {
    const { code, dimension, count, changeProbability, gainProbability } = look;
    steps.push({ code, facts: { dimension, count, changeProbability, gainProbability } });
  }
  for (const dimension of charted) {
    if (!known.some((one) => one.charted === dimension)) {
      steps.push({ code: "measure-dimension", facts: { dimension: readable(dimension) } });
    }
  }
  if (belt !== undefined) steps.push({ code: "take-hip-belt", facts: { size: belt.pick } });
  steps.push(...swaps(circumstances));
  if (plain.verdict === "outside-the-range" && plain.outside !== undefined) {
    steps.push({ code: "other-chart", facts: { dimension: plain.outside.dimension } });
  }
  const isOpen = plain.verdict === "two-sizes-fit" || plain.verdict === "between-sizes";
  if (isOpen && settled.other !== undefined) {
    steps.push({ code: "try-both", facts: { size: settled.pick.size, other: settled.other.size } });
  }
  steps.push({ code: "check-on-body", facts: {} }, { code: "see-fitter", facts: {} });
  return steps;
}

/** A chart that says "hip" is judged by the girth around the crests, so that is the one to read. */
function readable(dimension: string): string {
  return dimension === "unstated-hip-girth" ? "hip-belt-girth" : dimension;
}

function swaps(circumstances: Circumstances): readonly PlainReason<NextStepCode>[] {
  const { chart, settled, known, judged, plain, policy } = circumstances;
  const steps: PlainReason<NextStepCode>[] = [];
  const size = chart.sizes.find((one) => one.name === settled.pick.size);
  for (const { charted, belief } of known) {
    const binds = judged.some((one) => one.charted === charted);
    const range = size?.ranges[charted];
    if (binds || range === undefined) continue;
    const { from, to } = range.interval;
    const isOutside = belief.meanMm < from || belief.meanMm > to;
    if (isOutside) {
      steps.push({ code: "swap-hip-belt", facts: { size: settled.pick.size, dimension: charted } });
    }
  }
  const main = judged[0];
  const outside = plain.outside;
  const isShort = settled.pick.probability < policy.fitProbability;
  if (
    chart.swappable.includes("harness") &&
    isShort &&
    outside !== undefined &&
    outside.dimension === main?.charted
  ) {
    steps.push({ code: "swap-harness", facts: { side: outside.end === "below" ? "shorter" : "longer" } });
  }
  return steps;
}
