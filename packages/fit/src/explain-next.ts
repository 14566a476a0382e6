import type { ChartDimension } from "@tapewise/charts";
import type { DimensionId } from "@tapewise/landmarks";
import type { Facts, Issue } from "@tapewise/outcome";
import type { Choice } from "./choice.ts";
import { confirmPick } from "./confirm-pick.ts";
import { explainSwaps } from "./explain-swaps.ts";
import type { Inquiry } from "./inquiry.ts";
import { setsHarnessLength } from "./judged-dimensions.ts";
import type { NextStepCode } from "./next-steps.ts";
import type { Look } from "./plan-look.ts";
import { proposeOtherChart } from "./propose-other-chart.ts";
import type { PlainReason } from "./reason.ts";

type Step = PlainReason<NextStepCode>;

/** What to do next, the most useful first. The checks on the body and the caution always stand last. */
export function explainNext(choice: Choice, { questions, policy }: Inquiry): readonly Step[] {
  const { belt, look } = choice;
  const steps: Step[] = questions.map(checkReading);
  const unread = unreadDimensions(choice);
  steps.push(...unread.filter(setsHarnessLength).map(measure));
  if (look !== undefined && !unread.includes(look.dimension)) {
    steps.push({ code: look.code, facts: lookFacts(look) });
  }
  steps.push(...unread.filter((dimension) => !setsHarnessLength(dimension)).map(measure));
  steps.push(...confirmPick(choice, policy));
  if (belt !== undefined && belt.pick.probability >= policy.fitProbability) {
    steps.push({ code: "take-hip-belt", facts: { belt: belt.pick.size } });
  }
  steps.push(...explainSwaps(choice, policy));
  steps.push(...proposeOtherChart(choice, policy));
  steps.push(...tryBoth(choice, policy.sureProbability));
  steps.push({ code: "check-on-body", facts: {} }, { code: "see-fitter", facts: {} });
  return steps;
}

function checkReading({ path, facts }: Issue): Step {
  const { readingMm = "", differenceMm = "", side = "", label = EVERYBODY } = facts;
  const dimension = String(path.at(-1));
  return { code: "check-reading", facts: { dimension, readingMm, differenceMm, side, label } };
}

/** Whom a reading is held against where no prior says it better. */
const EVERYBODY = "anybody, children included";

/** What the chart sizes by and nobody has read, whether or not a prior stands in for it. */
function unreadDimensions({ charted, known }: Choice): readonly DimensionId[] {
  const isRead = (name: ChartDimension) =>
    known.some((one) => one.charted === name && one.belief.from !== "prior");
  // A chart that says "hip" is judged by the girth around the crests, so that is the one to read.
  const unread = charted
    .filter((name) => !isRead(name))
    .map((name) => (name === "unstated-hip-girth" ? "hip-belt-girth" : name));
  return [...new Set(unread)];
}

function measure(dimension: DimensionId): Step {
  return { code: "measure-dimension", facts: { dimension } };
}

function lookFacts({ dimension, count, nowProbability, changeProbability, gainProbability }: Look): Facts {
  const times = ["", "once", "twice"][count] ?? `${count} times`;
  const thenProbability = Math.min(1, nowProbability + gainProbability);
  return { dimension, count, times, changeProbability, nowProbability, gainProbability, thenProbability };
}

/** Worth the while where more than one size fits, where none does, and where another may well be the right one. */
function tryBoth({ plain, settled: { pick, other } }: Choice, sureProbability: number): readonly Step[] {
  if (other === undefined || plain.verdict === "outside-the-range") return [];
  const isRival = pick.probability < sureProbability && other.probability >= 1 - sureProbability;
  if (plain.verdict === "fits" && !isRival) return [];
  return [{ code: "try-both", facts: { size: pick.size, other: other.size } }];
}
