import type { ChartDimension } from "@tapewise/charts";
import type { Circumstances } from "./circumstances.ts";
import { explainChart } from "./explain-chart.ts";
import { explainNext } from "./explain-next.ts";
import { explainPick } from "./explain-pick.ts";
import type { Reason } from "./reason.ts";
import { type NextStepCode, nextStepTexts, type ReasonCode, reasonTexts } from "./reasons.ts";
import type { PlainReason } from "./settle.ts";
import { type SentenceUnit, speakDimension, writeReason } from "./write-reason.ts";

/** The reasons of a choice and what to do next, in words. */
export interface Explanation {
  readonly reasons: readonly Reason<ReasonCode>[];
  readonly next: readonly Reason<NextStepCode>[];
}

/** Puts a choice into words: first why this size, then what the chart leaves open, then what to do. */
export function explain(circumstances: Circumstances): Explanation {
  const reasons = [...explainPick(circumstances), ...explainChart(circumstances)];
  return {
    reasons: reasons.map((reason) => write(reasonTexts, reason, circumstances.unit)),
    next: explainNext(circumstances).map((step) => write(nextStepTexts, step, circumstances.unit)),
  };
}

function write<Code extends string>(
  texts: Readonly<Record<Code, string>>,
  reason: PlainReason<Code>,
  unit: SentenceUnit,
): Reason<Code> {
  const spoken = Object.entries(reason.facts).map(([name, value]) => [
    name,
    NAMES_DIMENSION.has(name) && typeof value === "string" ? speakDimension(value as ChartDimension) : value,
  ]);
  const written = writeReason(texts, reason.code, Object.fromEntries(spoken), unit);
  return { ...written, facts: reason.facts };
}

/** Facts that hold a dimension's id; sentences say its name. */
const NAMES_DIMENSION: ReadonlySet<string> = new Set(["dimension", "mainDimension"]);
