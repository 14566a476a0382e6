import {
  type BodyCheckState,
  type BodyCheckStep,
  type GivenAnswer,
  writeBodyCheck,
} from "@tapewise/afterwards";
import { type Caution, cautions } from "@tapewise/landmarks";
import { cleanWord } from "../text/clean.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { chanceToFit } from "./chance.ts";

/** The cautions that belong to a pack on the body. */
export function carryingCautions(): readonly Caution[] {
  return cautions.filter(({ moments }) => moments.includes("carrying"));
}

/** When to stop, and whom to ask. */
export function checkCautionLines(width?: number): string[] {
  return [
    "Be careful",
    ...bullets(
      carryingCautions().map(({ name, ask }) => `${name}. ${ask}`),
      "  ",
      width,
    ),
  ];
}

const ENDS: Readonly<Record<Exclude<BodyCheckStep["kind"], "ask">, string>> = {
  adjust: "Set this, then look again",
  exchange: "Exchange it",
  "sits-right": "It sits right",
  "see-fitter": "See a fitter",
};

/** What a check came to. */
export function endLines({ step }: BodyCheckState, unit: "cm" | "in", width?: number): string[] {
  if (step.kind === "ask") return [];
  const { sentences } = writeBodyCheck(step, { unit });
  return [ENDS[step.kind], ...bullets([...sentences, ...chanceOf(step)].map(cleanWord), "  ", width)];
}

/** The chance that is given, and why it is another than that of a choice. */
function chanceOf(step: BodyCheckStep): string[] {
  const doubt = "counts in that the chart itself may be off, so it can be lower than what choose says.";
  if (step.kind === "exchange") return [`Each chance ${doubt}`];
  if (step.kind !== "sits-right" || step.probability === undefined) return [];
  return [`By readings and looks together it has ${chanceToFit(step.probability)}. This ${doubt}`];
}

/** Where a check stands: what was seen, and the next question with its answers, or the end. */
export function checkLines(state: BodyCheckState, unit: "cm" | "in"): string[] {
  const { setup, look, answers, step } = state;
  const belt = setup.belt === undefined ? "" : `, hip belt ${setup.belt}`;
  const which = look === 1 ? "first look" : "second look, after it was set";
  return [
    ...checkCautionLines(),
    "",
    ...wrap(cleanWord(`${setup.chart.chart}, ${setup.size}${belt}: ${which}`)),
    ...(answers.length === 0 ? [] : ["", "Seen", ...bullets(answers.map(seen))]),
    "",
    ...(step.kind === "ask" ? questionLines(step, look, unit) : endLines(state, unit)),
    ...(step.kind === "adjust" ? ["", ...wrap(GO_ON)] : []),
  ];
}

const GO_ON =
  "Once it is set, make the same call with --again added at its end: it asks the first question of the second look.";

function seen({ item, answer }: GivenAnswer): string {
  return `${item}: ${writtenAnswer(item, answer)}`;
}

function writtenAnswer(item: GivenAnswer["item"], answer: string): string {
  const { choices } = writeBodyCheck({ kind: "ask", item }, { unit: "cm" });
  return choices.find(({ id }) => id === answer)?.answer ?? answer;
}

function questionLines(
  step: Extract<BodyCheckStep, { kind: "ask" }>,
  look: BodyCheckState["look"],
  unit: "cm" | "in",
): string[] {
  const { sentences, choices } = writeBodyCheck(step, { unit });
  const option = look === 1 ? "--answer" : "--again";
  return [
    step.because === undefined ? "Look at this next" : "This contradicts itself",
    ...sentences.flatMap((sentence) => wrap(sentence, { first: "  ", rest: "  " })),
    "",
    `Answer with ${option}`,
    ...choices.flatMap(({ id, answer }) => [
      `  ${step.item}=${id}`,
      ...wrap(answer, { first: "      ", rest: "      " }),
    ]),
  ];
}
