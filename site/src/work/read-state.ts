import type { ShownUnit } from "../parts/lengths.ts";
import type { Keys } from "./fragment.ts";

/** The text of the chart as it stands in the field, and the unit that lengths are shown in. */
export interface ReadState {
  readonly unit: ShownUnit;
  readonly text: string;
}

export const emptyReadState: ReadState = { unit: "cm", text: "" };

/** What can stand in the page's fragment. */
export const readKeys: Keys<ReadState> = {
  unit: {
    read: (value, state) => (value === "cm" || value === "in" ? { ...state, unit: value } : undefined),
    write: (state) => state.unit,
  },
  chart: {
    read: (value, state) => ({ ...state, text: value }),
    write: (state) => (state.text.trim() === "" ? undefined : state.text),
  },
};
