import { defaultPolicy } from "@tapewise/fit";
import { errorDefaults, type HandError, type ToolError } from "@tapewise/measurement";

/** Everything that a choice takes for granted about torso readings and people. Lengths in mm. */
export interface Figures extends HandError {
  readonly tape: ToolError;
  readonly cord: ToolError;
  readonly rule: ToolError;
  /** What each of the figures is worth; in a world, how much people differ in them. */
  readonly degreesOfFreedom: number;
  /** What is added to every reading of everybody. */
  readonly sharedBiasMm: number;
  /** What a way along the spine is longer than the survey's straight one. */
  readonly surplusMm: number;
  /** By how much people of one stature are longer in the torso than those surveyed. */
  readonly priorShiftMm: number;
  /** Times the spread of people of one stature. */
  readonly priorSpread: number;
  readonly hasPrior: boolean;
  /** Most fit probability that a reason of build may cost. */
  readonly tieLoss: number;
}

/** The figures as the library has them. In the world of the default everything is as assumed and all people err alike. */
export const asAssumed: Figures = {
  ...errorDefaults.hands["length along the body"].self,
  tape: errorDefaults.tools.tape,
  cord: errorDefaults.tools["cord-and-ruler"],
  rule: errorDefaults.tools["short-rule"],
  degreesOfFreedom: errorDefaults.degreesOfFreedom,
  sharedBiasMm: 0,
  surplusMm: 0,
  priorShiftMm: 0,
  priorSpread: 1,
  hasPrior: true,
  tieLoss: defaultPolicy.tieLoss,
};

export type ToolOf = "tape" | "cord-and-ruler" | "short-rule";

/** One assumption, and the range over which it is moved. */
export interface Assumption {
  readonly id: string;
  readonly name: string;
  readonly unit: string;
  /** What it is now. */
  readonly now: string;
  readonly low: string;
  readonly high: string;
  /** Why that range. */
  readonly why: string;
  /** How to measure it. */
  readonly plan: string;
  readonly tool: ToolOf;
  readonly at: (end: "low" | "high") => Partial<Figures>;
  /** Whether it is a fact about people and tools that can be otherwise, and not only a rule of choice. */
  readonly isFact: boolean;
}

const { tape, cord, rule } = asAssumed;
const moved = (
  id: keyof Figures,
  name: string,
  unit: string,
  ends: readonly [low: number, high: number],
  why: string,
  plan: string,
  more: Partial<Assumption> = {},
): Assumption => ({
  id,
  name,
  unit,
  now: String(asAssumed[id]),
  low: String(ends[0]),
  high: String(ends[1]),
  why,
  plan,
  tool: "tape",
  isFact: true,
  at: (end) => ({ [id]: ends[end === "low" ? 0 : 1] }),
  ...more,
});
const ofTool = (
  id: "tape" | "cord" | "rule",
  key: keyof ToolError,
  name: string,
  unit: string,
  ends: readonly [low: number, high: number],
  why: string,
  plan: string,
): Assumption => {
  const own = { tape, cord, rule }[id];
  return {
    id: `${id}-${key}`,
    name,
    unit,
    now: String(own[key]),
    low: String(ends[0]),
    high: String(ends[1]),
    why,
    plan,
    tool: id === "tape" ? "tape" : id === "cord" ? "cord-and-ruler" : "short-rule",
    isFact: true,
    at: (end) => ({ [id]: { ...own, [key]: ends[end === "low" ? 0 : 1] } }),
  };
};

const DOUBT =
  "the table's figures may be off by a quarter, so by a half in both directions at two such steps";
const REPEATS =
  "a reliability study: ten people and more, two measurers, three readings each, the bones found once";
const AFRESH =
  "the same study with the bones found afresh for each reading: the difference of the two scatters";

/** What is moved, one at a time. */
export const assumptions: readonly Assumption[] = [
  moved("handlingMm", "scatter of a reading", "mm", [3, 9], DOUBT, REPEATS),
  moved(
    "findingMm",
    "slip in finding the bones",
    "mm",
    [2.5, 10],
    "C7 is found right in about half of the cases, and vertebrae are some 15 to 20 mm apart",
    AFRESH,
  ),
  moved(
    "lastingMm",
    "habit of whoever measures",
    "mm",
    [2.5, 10],
    "a habit is not seen in one person's repeats; twice as much is as likely as half",
    "several measurers on the same people: variance components between measurers",
  ),
  moved(
    "sharedBiasMm",
    "bias that all readings share",
    "mm",
    [-10, 10],
    "one vertebra taken for its neighbour, or the navel for the crest line, in half of the people",
    "self-readings beside those of a trained measurer on the same people: the mean difference",
  ),
  ofTool(
    "tape",
    "scaleHalfWidth",
    "scale of a tape, half-width",
    "of the length",
    [0.001, 0.01],
    "from a new tape to a paper one that was printed too small",
    "a dozen household tapes beside a steel rule",
  ),
  ofTool(
    "cord",
    "scaleHalfWidth",
    "stretch of a cord, half-width",
    "of the length",
    [0.003, 0.03],
    "from a shoelace that does not give to a knitted cord",
    "cords of several kinds, pulled by hand, beside a steel rule",
  ),
  ofTool(
    "cord",
    "transferMm",
    "carrying a cord to a ruler",
    "mm",
    [1, 4],
    DOUBT,
    "one length carried over twenty times by several people",
  ),
  ofTool(
    "rule",
    "jointMm",
    "joint of a rule laid end to end",
    "mm",
    [1, 4],
    DOUBT,
    "a known length read with a short rule by several people",
  ),
  moved(
    "degreesOfFreedom",
    "degrees of freedom of each figure",
    "",
    [3, 30],
    "from figures that may be off by two fifths to such that may be off by an eighth; in a world of so many, people differ as much, where by default all err alike",
    "how much people differ in their scatter: variances of a study with many measurers",
  ),
  moved(
    "surplusMm",
    "curve of the spine beyond the straight length",
    "mm",
    [0, 20],
    "10 mm on average down to the navel in 1,986 women (ANSUR II), nobody knows it down to the crest",
    "both lengths, straight and along the spine, on the same people",
  ),
  moved(
    "priorShiftMm",
    "torso of the public at one stature",
    "mm",
    [-10, 10],
    "soldiers are selected; half of the spread at one stature",
    "torso lengths and statures of a few hundred of the public",
  ),
  moved(
    "priorSpread",
    "spread of torsos at one stature",
    "times",
    [0.8, 1.25],
    "as the same for soldiers and the public is not known",
    "the same few hundred people",
  ),
  moved(
    "hasPrior",
    "use of a prior at all",
    "",
    [0, 1],
    "without and with the survey's torso at a stature",
    "choose with and without it on people who were measured twice",
    {
      now: "yes",
      low: "no",
      high: "yes",
      isFact: false,
      at: (end) => ({ hasPrior: end === "high" }),
    },
  ),
  moved(
    "tieLoss",
    "what a reason of build may cost",
    "probability",
    [0, 0.1],
    "none, and twice as much",
    "exchanges of people with broad chests, by the size they took first",
    { isFact: false },
  ),
];
