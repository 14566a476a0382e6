import { answerBodyCheck, type BodyCheckState, bodyCheckItems, lookAgain } from "@tapewise/afterwards";
import type { StatedAnswer } from "./read-answers.ts";

/** A check after the answers of a call. */
export interface Replayed {
  readonly state: BodyCheckState;
  /** Answers that nothing asked for: the check had ended, or asked for others first. */
  readonly unused: readonly StatedAnswer[];
}

/**
 * Gives a check the answers of a call. They may stand in any order; an item that is asked twice, because answers
 * contradict each other, takes its second one. `again` holds those of the look after the pack was set, and an
 * empty list begins that look. Pain and the other reasons to stop end the check wherever they stand.
 */
export function replayAnswers(
  started: BodyCheckState,
  answers: readonly StatedAnswer[],
  again: readonly StatedAnswer[] | undefined,
): Replayed {
  const first = giveAnswers(started, answers);
  if (again === undefined) return first;
  if (first.state.step.kind !== "adjust") {
    const stopped = stopFor(first.state, again);
    return { state: stopped.state, unused: [...first.unused, ...stopped.unused] };
  }
  const second = giveAnswers(lookAgain(first.state), again);
  return { state: second.state, unused: [...first.unused, ...second.unused] };
}

function giveAnswers(started: BodyCheckState, answers: readonly StatedAnswer[]): Replayed {
  const seen = giveSeen(
    started,
    answers.filter((given) => !isStop(given)),
  );
  const stopped = stopFor(seen.state, answers.filter(isStop));
  return { state: stopped.state, unused: seen.unused };
}

/** The state after every answer that ends a check at once; the others are left. */
function stopFor(started: BodyCheckState, answers: readonly StatedAnswer[]): Replayed {
  const state = answers
    .filter(isStop)
    .reduce((now, { item, answer }) => answerBodyCheck(now, item, answer), started);
  return { state, unused: answers.filter((given) => !isStop(given)) };
}

function isStop({ item, answer }: StatedAnswer): boolean {
  const answers = bodyCheckItems.find(({ id }) => id === item)?.answers;
  return answers?.find(({ id }) => id === answer)?.stop !== undefined;
}

function giveSeen(started: BodyCheckState, answers: readonly StatedAnswer[]): Replayed {
  const unused = [...answers];
  let state = started;
  for (;;) {
    const { step } = state;
    if (step.kind !== "ask") return { state, unused };
    const place = unused.findIndex(({ item }) => item === step.item);
    const [given] = place < 0 ? [] : unused.splice(place, 1);
    if (given === undefined) return { state, unused };
    state = answerBodyCheck(state, given.item, given.answer);
  }
}
