import type { ChartDimension } from "@tapewise/charts";
import type { Facts, Issue } from "@tapewise/outcome";
import type { Choice } from "./choice.ts";
import { explainSwaps } from "./explain-swaps.ts";
import type { Inquiry } from "./inquiry.ts";
import { setsHarnessLength } from "./judged-dimensions.ts";
import type { NextStepCode } from "./next-steps.ts";
import type { Look } from "./plan-look.ts";
import type { PlainReason } from "./reason.ts";

type Step = PlainReason<NextStepCode>;

/** What to do next, the most useful first. The checks on the body and the caution always stand last. */
export function explainNext(choice: Choice, { questions, policy }: Inquiry): readonly Step[] {
  const { belt, look, outside } = choice;
  const steps: Step[] = questions.map(checkReading);
  const unread = choice.charted.filter((one) => !choice.known.some(({ charted }) => charted === one));
  steps.push(...unread.filter((one) => setsHarnessLength(one)).map(measure));
  if (look !== undefined) steps.push({ code: look.code, facts: lookFacts(look) });
  steps.push(...unread.filter((one) => !setsHarnessLength(one)).map(measure));
  if (belt !== undefined) steps.push({ code: "take-hip-belt", facts: { belt: belt.pick.size } });
  steps.push(...explainSwaps(choice, policy));
  if (outside !== undefined) steps.push({ code: "other-chart", facts: { dimension: outside.dimension } });
  steps.push(...tryBoth(choice, policy.sureProbability));
  steps.push({ code: "check-on-body", facts: {} }, { code: "see-fitter", facts: {} });
  return steps;
}

function checkReading({ path, facts }: Issue): Step {
  const { readingMm = "", differenceMm = "", side = "", label = "" } = facts;
  const dimension = String(path.at(-1));
  return { code: "check-reading", facts: { dimension, readingMm, differenceMm, side, label } };
}

/** A chart that says "hip" is judged by the girth around the crests, so that is the one to read. */
function measure(dimension: ChartDimension): Step {
  const read = dimension === "unstated-hip-girth" ? "hip-belt-girth" : dimension;
  return { code: "measure-dimension", facts: { dimension: read } };
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
