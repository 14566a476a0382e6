import type { ShownUnit } from "../parts/lengths.ts";
import type { Key, Keys } from "./fragment.ts";

/** Whom a chart is held against. */
export const fitsPeople = ["women", "men", "both"] as const;
export type FitsPeople = (typeof fitsPeople)[number];

/** What stands in the fields: texts as they were written. */
export interface FitsState {
  readonly unit: ShownUnit;
  /** Ids of charts of the shelf, of which there is one; none where the chart is one's own. */
  readonly shelf: string;
  /** Text of a chart of one's own. */
  readonly pasted: string;
  readonly people: FitsPeople;
  /** Women of a hundred people, where there are both. */
  readonly women: number;
  /** Mean stature of the women, and of the men, where it is not the survey's. */
  readonly tallWomen: string;
  readonly tallMen: string;
  readonly members: string;
  /** Chance in per cent that nobody goes without. */
  readonly chance: string;
  /** How many sizes would be cut, and over what length each adjusts. */
  readonly sizes: number;
  readonly span: string;
}

/** As many sizes as the page cuts. */
export const MOST_CUTS = 10;

/** What a link begins from. */
export const emptyFits: FitsState = {
  unit: "cm",
  shelf: "",
  pasted: "",
  people: "both",
  women: 50,
  tallWomen: "",
  tallMen: "",
  members: "40",
  chance: "95",
  sizes: 4,
  span: "5 cm",
};

const LONGEST_TEXT = 80;

function text(name: "tallWomen" | "tallMen" | "members" | "chance" | "span"): Key<FitsState> {
  return {
    read: (value, state) => (value.length > LONGEST_TEXT ? undefined : { ...state, [name]: value }),
    write: (state) => (state[name] === emptyFits[name] ? undefined : state[name]),
  };
}

function count(name: "women" | "sizes", least: number, most: number): Key<FitsState> {
  return {
    read: (value, state) => {
      const number = /^\d{1,3}$/.test(value) ? Number(value) : Number.NaN;
      return number >= least && number <= most ? { ...state, [name]: number } : undefined;
    },
    write: (state) => (state[name] === emptyFits[name] ? undefined : String(state[name])),
  };
}

/** What can stand in the page's fragment, given the charts of the shelf. */
export function fitsKeys(shelf: readonly string[]): Keys<FitsState> {
  return {
    packs: {
      read: (value, state) => (shelf.includes(value) ? { ...state, shelf: value } : undefined),
      write: (state) => (state.shelf === "" ? undefined : state.shelf),
    },
    people: {
      read: (value, state) => {
        const people = fitsPeople.find((known) => known === value);
        return people === undefined ? undefined : { ...state, people };
      },
      write: (state) => state.people,
    },
    women: count("women", 1, 99),
    "tall-women": text("tallWomen"),
    "tall-men": text("tallMen"),
    members: text("members"),
    chance: text("chance"),
    sizes: count("sizes", 1, MOST_CUTS),
    span: text("span"),
    unit: {
      read: (value, state) => (value === "cm" || value === "in" ? { ...state, unit: value } : undefined),
      write: (state) => state.unit,
    },
    chart: {
      read: (value, state) => ({ ...state, pasted: value }),
      write: (state) => (state.pasted.trim() === "" ? undefined : state.pasted),
    },
  };
}
