import { bodyCheckItemIds } from "./body-check-item.ts";
import type { BodyCheckState, BodyCheckStep, GivenAnswer } from "./body-check-state.ts";
import { endLook } from "./end-look.ts";
import { findContradiction } from "./find-contradiction.ts";
import { meaningOf } from "./find-item.ts";

/** The state with the next step that its answers call for; contradicting answers are taken back once. */
export function takeStep(state: Omit<BodyCheckState, "step">): BodyCheckState {
  const { answers, questioned } = state;
  const latest = answers.at(-1);
  const stop = cautionIn(answers) ?? (latest === undefined ? undefined : setFirst(state, latest));
  if (stop !== undefined) return { ...state, step: stop };
  const found = findContradiction(answers);
  if (found === undefined) return { ...state, step: askNext(state) };
  if (questioned !== undefined) {
    return { ...state, step: { kind: "see-fitter", reason: "answers-contradict" } };
  }
  const kept = answers.filter(({ item }) => !found.items.includes(item));
  const asked = { ...state, answers: kept, questioned: found.contradiction, takenBack: found.items };
  return { ...asked, step: askNext(asked) };
}

/** What ends a check at once, whatever else was seen: pain before all others, for it says to stop carrying now. */
function cautionIn(answers: readonly GivenAnswer[]): BodyCheckStep | undefined {
  const stops = answers.flatMap((given) => meaningOf(given).stop ?? []);
  const reason = stops.find((stop) => stop === "pain-or-numbness") ?? stops[0];
  return reason === undefined ? undefined : { kind: "see-fitter", reason };
}

/** What ends a look at once, for nothing else can be judged before it is set. */
function setFirst({ look }: Pick<BodyCheckState, "look">, given: GivenAnswer): BodyCheckStep | undefined {
  const { isFirst, adjust } = meaningOf(given);
  if (isFirst !== true || adjust === undefined) return undefined;
  return look === 1
    ? { kind: "adjust", adjustments: [adjust] }
    : { kind: "see-fitter", reason: "still-not-right" };
}

function askNext(state: Omit<BodyCheckState, "step">): BodyCheckStep {
  const { answers, takenBack = [], questioned } = state;
  const item = bodyCheckItemIds.find((id) => !answers.some((given) => given.item === id));
  if (item === undefined) return endLook(state);
  const because = takenBack.includes(item) ? questioned : undefined;
  return { kind: "ask", item, ...(because === undefined ? {} : { because }) };
}
