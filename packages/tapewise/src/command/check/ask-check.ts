import { answerBodyCheck, type BodyCheckState, lookAgain, writeBodyCheck } from "@tapewise/afterwards";
import { type Asker, createAsker } from "../guide/asker.ts";
import { type Io, pageWidth, print } from "../io.ts";
import { checkCautionLines, endLines } from "../report/check-lines.ts";
import { wrap } from "../text/wrap.ts";

/** Walks through a check on a terminal, question by question; the state that it ends in, or nothing where it was left. */
export async function askCheck(
  started: BodyCheckState,
  unit: "cm" | "in",
  io: Io,
): Promise<BodyCheckState | undefined> {
  const asker = createAsker(io);
  const width = pageWidth(io.stdout);
  let state = started;
  try {
    await print(io.stdout, [...checkCautionLines(width), ""]);
    for (;;) {
      const answered = await askOne(state, unit, asker, io);
      if (answered === undefined) return await leave(io);
      state = answered;
      if (state.step.kind === "ask") continue;
      await print(io.stdout, endLines(state, unit, width));
      if (state.step.kind !== "adjust") return state;
      if (!(await isSet(asker, io))) return await leave(io);
      state = lookAgain(state);
      await print(io.stdout, [""]);
    }
  } finally {
    asker.close();
  }
}

/** Waits until the pack is set; `false` where the check was left instead. */
async function isSet(asker: Asker, io: Io): Promise<boolean> {
  for (;;) {
    const typed = await asker.ask("Set it, look again, and press Enter; q to leave. ");
    if (typed === undefined || isLeaving(typed)) return false;
    if (typed.trim() === "") return true;
    await print(io.stdout, ["Press Enter alone once it is set, or type q to leave."]);
  }
}

function isLeaving(typed: string): boolean {
  return /^\s*(?:q|quit)\s*$/i.test(typed);
}

async function askOne(
  state: BodyCheckState,
  unit: "cm" | "in",
  asker: Asker,
  io: Io,
): Promise<BodyCheckState | undefined> {
  const { step } = state;
  if (step.kind !== "ask") return state;
  const width = pageWidth(io.stdout);
  const { sentences, choices } = writeBodyCheck(step, { unit });
  await print(io.stdout, [
    ...sentences.flatMap((sentence) => wrap(sentence, FLUSH, width)),
    ...choices.flatMap(({ answer }, place) =>
      wrap(answer, { first: `  ${place + 1}. `, rest: "     " }, width),
    ),
  ]);
  for (;;) {
    const typed = await asker.ask("A number, or q to leave: ");
    if (typed === undefined || isLeaving(typed)) return undefined;
    const text = typed.trim();
    const choice = /^\d{1,3}$/.test(text) ? choices[Number(text) - 1] : undefined;
    if (choice !== undefined) {
      await print(io.stdout, [...wrap(choice.tells, { first: "  ", rest: "  " }, width), ""]);
      return answerBodyCheck(state, step.item, choice.id);
    }
    await print(io.stdout, [`Type a number from 1 to ${choices.length}.`]);
  }
}

async function leave(io: Io): Promise<undefined> {
  await print(io.stdout, ["", "Left. Nothing was kept."]);
  return undefined;
}

const FLUSH = { first: "", rest: "" };
