import {
  answerBodyCheck,
  type BodyCheckSetup,
  type BodyCheckState,
  bodyCheckItemIds,
  bodyCheckItems,
  type GivenAnswer,
  startBodyCheck,
} from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";
import type { UncertainLength } from "@tapewise/fit";

/** A fixed harness in three sizes whose belts come with them. */
export const fixedChart: SizeChart = parseChart(
  "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-95\nM,42-47,80-105\nL,46-51,90-120\n",
  { chart: "Doily 45", maker: "Gingham", harness: "fixed" },
);

/** The same with a harness that can be set and a belt that can be swapped. */
export const adjustableChart: SizeChart = { ...fixedChart, harness: "adjustable", swappable: ["hip-belt"] };

/** A torso length in the middle of M. */
export const middling: UncertainLength = {
  meanMm: 445,
  sdMm: 9,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
};

/** The state that a check begins with. */
export function begin(setup: BodyCheckSetup): BodyCheckState {
  const started = startBodyCheck(setup);
  if (!started.ok) throw new Error(started.issues[0].message);
  return started.value;
}

/** Answers what is asked, in any order of the list, until nothing is asked or the answer is not in it. */
export function answerAll(state: BodyCheckState, answers: Readonly<Record<string, string>>): BodyCheckState {
  let now = state;
  while (now.step.kind === "ask") {
    const answer = answers[now.step.item];
    if (answer === undefined) return now;
    now = answerBodyCheck(now, now.step.item, answer);
  }
  return now;
}

/** The answers of somebody on whom everything sits right. */
export const allRight: Readonly<Record<string, string>> = {
  cautions: "none",
  "belt-position": "over-crests",
  "belt-closure": "gap-at-buckle",
  "back-panel": "a-little-below",
  "shoulder-contact": "follows",
  "upper-straps": "about-half-right-angle",
  "strap-ends": "hand-below-armpit",
  "sternum-strap": "breathes-freely",
  "pressure-points": "none",
};

/** A state, an answer to what it asks, and the state that follows. */
export type OnAnswer = (before: BodyCheckState, given: GivenAnswer, after: BodyCheckState) => void;

/** Every state that can be reached by answers, each once; `onAnswer` sees every answer that every one of them allows. */
export function reachable(start: BodyCheckState, onAnswer: OnAnswer = () => {}): readonly BodyCheckState[] {
  const seen = new Map<string, BodyCheckState>([[keyOf(start), start]]);
  const queue = [start];
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    const { step } = next;
    if (step.kind !== "ask") continue;
    const item = bodyCheckItems.find(({ id }) => id === step.item);
    for (const { id } of item?.answers ?? []) {
      const after = answerBodyCheck(next, step.item, id);
      onAnswer(next, { item: step.item, answer: id }, after);
      const key = keyOf(after);
      if (seen.has(key)) continue;
      seen.set(key, after);
      queue.push(after);
    }
  }
  return [...seen.values()];
}

/**
 * What tells two states apart: the order in which answers were given does not, nor which of them are asked for the second
 * time, which only the words of a question go by.
 */
function keyOf({ look, questioned, answers, step }: BodyCheckState): string {
  const given: string[] = [];
  for (const { item, answer } of answers) given[bodyCheckItemIds.indexOf(item)] = answer;
  return `${look} ${questioned ?? ""} ${step.kind} ${given.join(" ")}`;
}
