import { fit, landmarks } from "tapewise";
import type { ShownUnit } from "../parts/lengths.ts";
import type { Keys } from "./fragment.ts";

/** The dimensions that the page has fields for, in their order. */
export const readDimensions = ["torso-length", "hip-belt-girth", "hip-girth"] as const;

export type ReadDimension = (typeof readDimensions)[number];

/** What stands in the fields: texts as they were written, blanks included. */
export interface ChooseState {
  readonly unit: ShownUnit;
  readonly readings: Readonly<Record<ReadDimension, readonly string[]>>;
  readonly measuredBy: landmarks.MeasuredBy | "";
  readonly tool: landmarks.Tool | "";
  readonly ruleLength: string;
  readonly afresh: "yes" | "no" | "";
  readonly cut: "women" | "men" | "";
  readonly stature: string;
  readonly isPriorLeftOut: boolean;
  readonly build: readonly fit.BuildFeature[];
  readonly isFirstPack: boolean;
  /** Ids of the charts of the shelf. */
  readonly shelf: readonly string[];
  /** Text of a chart of one's own. */
  readonly pasted: string;
}

/** As many fields as are shown when nothing is entered. */
const FIELDS = 3;

/** As many readings of a dimension as anybody takes; a link may not ask for more fields. */
export const MOST_READINGS = 12;

export const emptyState: ChooseState = {
  unit: "cm",
  readings: { "torso-length": ["", "", ""], "hip-belt-girth": ["", "", ""], "hip-girth": [] },
  measuredBy: "",
  tool: "",
  ruleLength: "",
  afresh: "",
  cut: "",
  stature: "",
  isPriorLeftOut: false,
  build: [],
  isFirstPack: false,
  shelf: [],
  pasted: "",
};

function oneOf<Word extends string>(value: string, words: readonly Word[]): Word | undefined {
  return words.find((word) => word === value);
}

function listOf<Word extends string>(value: string, words: readonly Word[]): readonly Word[] | undefined {
  const parts = value.split(",");
  const known = words.filter((word) => parts.includes(word));
  return known.length === parts.length ? known : undefined;
}

function readingsKey(dimension: ReadDimension): Keys<ChooseState>[string] {
  return {
    read: (value, state) => {
      const texts = value.split(";").map((text) => text.trim());
      if (texts.length > MOST_READINGS || texts.some((text) => text.length > 80)) return undefined;
      const blanks = Array.from({ length: Math.max(0, FIELDS - texts.length) }, () => "");
      return { ...state, readings: { ...state.readings, [dimension]: [...texts, ...blanks] } };
    },
    write: (state) => {
      const texts = state.readings[dimension].map((text) => text.trim()).filter((text) => text !== "");
      return texts.length === 0 ? undefined : texts.join("; ");
    },
  };
}

function wordKey<Name extends "measuredBy" | "tool" | "afresh" | "cut">(
  name: Name,
  words: readonly Exclude<ChooseState[Name], "">[],
): Keys<ChooseState>[string] {
  return {
    read: (value, state) => {
      const word = oneOf(value, words);
      return word === undefined ? undefined : { ...state, [name]: word };
    },
    write: (state) => (state[name] === "" ? undefined : state[name]),
  };
}

function textKey(name: "stature" | "ruleLength", longest: number): Keys<ChooseState>[string] {
  return {
    read: (value, state) => (value.length > longest ? undefined : { ...state, [name]: value }),
    write: (state) => (state[name].trim() === "" ? undefined : state[name].trim()),
  };
}

function flagKey(name: "isPriorLeftOut" | "isFirstPack", word: string): Keys<ChooseState>[string] {
  return {
    read: (value, state) => (value === word ? { ...state, [name]: true } : undefined),
    write: (state) => (state[name] ? word : undefined),
  };
}

/** What can stand in the page's fragment, given the charts of the shelf. */
export function chooseKeys(shelf: readonly string[]): Keys<ChooseState> {
  return {
    torso: readingsKey("torso-length"),
    belt: readingsKey("hip-belt-girth"),
    hip: readingsKey("hip-girth"),
    by: wordKey("measuredBy", landmarks.measurers),
    tool: wordKey("tool", landmarks.tools),
    rule: textKey("ruleLength", 80),
    afresh: wordKey("afresh", ["yes", "no"]),
    cut: wordKey("cut", ["women", "men"]),
    stature: textKey("stature", 80),
    prior: flagKey("isPriorLeftOut", "none"),
    build: {
      read: (value, state) => {
        const build = listOf(value, fit.buildFeatures);
        return build === undefined ? undefined : { ...state, build };
      },
      write: (state) => (state.build.length === 0 ? undefined : state.build.join(",")),
    },
    first: flagKey("isFirstPack", "yes"),
    packs: {
      read: (value, state) => {
        const packs = listOf(value, shelf);
        return packs === undefined ? undefined : { ...state, shelf: packs };
      },
      write: (state) => (state.shelf.length === 0 ? undefined : state.shelf.join(",")),
    },
    unit: {
      read: (value, state) => {
        const unit = oneOf(value, ["cm", "in"] as const);
        return unit === undefined ? undefined : { ...state, unit };
      },
      write: (state) => state.unit,
    },
    chart: {
      read: (value, state) => ({ ...state, pasted: value }),
      write: (state) => (state.pasted.trim() === "" ? undefined : state.pasted),
    },
  };
}
