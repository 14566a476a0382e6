import type { ShownUnit } from "../parts/lengths.ts";
import type { Key, Keys } from "./fragment.ts";

/** The dimensions that the lesson can be about. */
export const lessonDimensions = ["torso-length", "hip-belt-girth"] as const;
export type LessonDimension = (typeof lessonDimensions)[number];

/** Whose hands: those of the table of defaults, or ones that the teacher makes up. */
export const lessonHands = ["helper", "self", "own"] as const;
export type LessonHands = (typeof lessonHands)[number];

export const lessonTools = ["tape", "cord-and-ruler", "short-rule"] as const;
export type LessonTool = (typeof lessonTools)[number];

/** Slips: nobody slips, one in ten as in the made-up slip of the library, or figures of one's own. */
export const lessonSlips = ["none", "some", "own"] as const;
export type LessonSlips = (typeof lessonSlips)[number];

/** What stands in the fields. Lengths are texts as they were written. */
export interface AverageState {
  readonly unit: ShownUnit;
  /** Readings that are drawn, or those of a class. */
  readonly source: "drawn" | "class";
  readonly dimension: LessonDimension;
  readonly length: string;
  readonly hands: LessonHands;
  readonly tool: LessonTool;
  readonly bias: string;
  readonly lasting: string;
  readonly noise: string;
  /** The step that readings are rounded to. */
  readonly step: string;
  readonly slips: LessonSlips;
  /** Per cent, as written. */
  readonly slipChance: string;
  readonly slipSize: string;
  readonly slipSide: "either" | "longer" | "shorter";
  /** How many readings have been taken. */
  readonly taken: number;
  readonly seed: number;
  /** Id of a chart of the shelf; blank where sizes are one's own. */
  readonly chart: string;
  readonly pasted: string;
  /** The readings of a class, one a line. */
  readonly readings: string;
  /** What the readings of the class are held against; may be blank. */
  readonly held: string;
  /** Whether everything is shown large, for a wall. */
  readonly isLarge: boolean;
}

/** More than this a page does not draw. */
export const MOST_TAKEN = 10_000;
export const MOST_CLASS_READINGS = 10_000;

/** What a link begins from. */
export const emptyAverage: AverageState = {
  unit: "cm",
  source: "drawn",
  dimension: "torso-length",
  length: "43.4 cm",
  hands: "helper",
  tool: "tape",
  bias: "",
  lasting: "",
  noise: "",
  step: "0.1 cm",
  slips: "none",
  slipChance: "10",
  slipSize: "2 cm",
  slipSide: "either",
  taken: 5,
  seed: 1,
  chart: "marmalade-loom-teaspoon-35",
  pasted: "",
  readings: "",
  held: "",
  isLarge: false,
};

const LONGEST_TEXT = 80;

type TextName = "length" | "bias" | "lasting" | "noise" | "step" | "slipChance" | "slipSize" | "held";

/** A text that is written only where it differs from what a link begins from. */
function text(name: TextName): Key<AverageState> {
  return {
    read: (value, state) => (value.length > LONGEST_TEXT ? undefined : { ...state, [name]: value }),
    write: (state) => (state[name] === emptyAverage[name] ? undefined : state[name]),
  };
}

type WordName = "source" | "dimension" | "hands" | "tool" | "slips" | "slipSide";

function word<Name extends WordName>(name: Name, words: readonly AverageState[Name][]): Key<AverageState> {
  return {
    read: (value, state) => {
      const found = words.find((known) => known === value);
      return found === undefined ? undefined : { ...state, [name]: found };
    },
    write: (state) => (state[name] === emptyAverage[name] ? undefined : state[name]),
  };
}

function count(name: "taken" | "seed", least: number, most: number): Key<AverageState> {
  return {
    read: (value, state) => {
      const number = /^\d{1,9}$/.test(value) ? Number(value) : Number.NaN;
      return number >= least && number <= most ? { ...state, [name]: number } : undefined;
    },
    write: (state) => String(state[name]),
  };
}

/** What can stand in the page's fragment, given the charts of the shelf. */
export function averageKeys(shelf: readonly string[]): Keys<AverageState> {
  return {
    unit: {
      read: (value, state) => (value === "cm" || value === "in" ? { ...state, unit: value } : undefined),
      write: (state) => state.unit,
    },
    from: word("source", ["drawn", "class"]),
    what: word("dimension", lessonDimensions),
    length: text("length"),
    hands: word("hands", lessonHands),
    tool: word("tool", lessonTools),
    bias: text("bias"),
    lasting: text("lasting"),
    noise: text("noise"),
    step: text("step"),
    slips: word("slips", lessonSlips),
    chance: text("slipChance"),
    slip: text("slipSize"),
    side: word("slipSide", ["either", "longer", "shorter"]),
    taken: count("taken", 1, MOST_TAKEN),
    seed: count("seed", 0, 999_999_999),
    pack: {
      read: (value, state) =>
        value === "own"
          ? { ...state, chart: "" }
          : shelf.includes(value)
            ? { ...state, chart: value }
            : undefined,
      write: (state) =>
        state.chart === emptyAverage.chart ? undefined : state.chart === "" ? "own" : state.chart,
    },
    chart: {
      read: (value, state) => ({ ...state, pasted: value }),
      write: (state) => (state.pasted.trim() === "" ? undefined : state.pasted),
    },
    readings: {
      read: (value, state) => ({ ...state, readings: value }),
      write: (state) => (state.readings.trim() === "" ? undefined : state.readings),
    },
    held: text("held"),
    wall: {
      read: (value, state) => (value === "yes" ? { ...state, isLarge: true } : undefined),
      write: (state) => (state.isLarge ? "yes" : undefined),
    },
  };
}
