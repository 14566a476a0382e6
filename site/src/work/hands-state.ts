import type { ShownUnit } from "../parts/lengths.ts";
import type { Keys } from "./fragment.ts";

/** Dimensions that a study can be said to be about, where its text does not say. */
export const handsDimensions = [
  "torso-length",
  "hip-belt-girth",
  "hip-girth",
  "waist-girth",
  "chest-girth",
  "shoulder-breadth",
  "stature",
] as const;

export type HandsDimension = (typeof handsDimensions)[number];

/** Units of bare numbers, where the text does not say. */
export const bareUnits = ["mm", "cm", "in"] as const;

export type BareUnit = (typeof bareUnits)[number];

/** The text of the study, and what it does not say itself. */
export interface HandsState {
  readonly unit: ShownUnit;
  readonly text: string;
  readonly dimension: HandsDimension | "";
  readonly bare: BareUnit | "";
}

export const emptyHands: HandsState = { unit: "cm", text: "", dimension: "", bare: "" };

/** What can stand in the page's fragment. */
export const handsKeys: Keys<HandsState> = {
  unit: {
    read: (value, state) => (value === "cm" || value === "in" ? { ...state, unit: value } : undefined),
    write: (state) => state.unit,
  },
  what: {
    read: (value, state) => {
      const dimension = handsDimensions.find((known) => known === value);
      return dimension === undefined ? undefined : { ...state, dimension };
    },
    write: (state) => (state.dimension === "" ? undefined : state.dimension),
  },
  written: {
    read: (value, state) => {
      const bare = bareUnits.find((known) => known === value);
      return bare === undefined ? undefined : { ...state, bare };
    },
    write: (state) => (state.bare === "" ? undefined : state.bare),
  },
  study: {
    read: (value, state) => ({ ...state, text: value }),
    write: (state) => (state.text.trim() === "" ? undefined : state.text),
  },
};
