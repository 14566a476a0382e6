import type { outcome } from "tapewise";

/** The functions of the documentation that a reader can try, by the name of their file in `calls`. */
export type ExampleId =
  | "choose-size"
  | "read-chart"
  | "choose-for-table"
  | "average-readings"
  | "who-is-served"
  | "study-error"
  | "read-length";

/** What a reader has entered, by field. */
export type Entries = Readonly<Record<string, string>>;

/** One argument of the call, as it is typed. */
export interface ExampleField {
  readonly name: string;
  /** `list`: one text a line. `table`: a text as a whole. `text`: one line. `choice`: one of a few words. */
  readonly kind: "list" | "table" | "text" | "choice";
  readonly start: string;
  readonly choices?: readonly string[];
}

/** Where an issue belongs: a field, and the entry or the line in it, from 1. */
export interface IssueSpot {
  readonly field: string;
  readonly entry?: number;
  readonly line?: number;
}

/** A function that can be tried: what is entered, and which entry an issue is about. */
export interface Example {
  /** The name of the function. */
  readonly call: string;
  readonly fields: readonly ExampleField[];
  readonly spotOf: (issue: outcome.Issue) => IssueSpot;
}

// All charts and people are invented.
export const examples: Readonly<Record<ExampleId, Example>> = {
  "choose-size": {
    call: "chooseSize",
    fields: [
      { name: "torso", kind: "list", start: "45.1 cm\n44.8 cm\n45.2 cm" },
      { name: "hips", kind: "list", start: "93 cm\n92 cm" },
      {
        name: "chart",
        kind: "table",
        start: "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-92\nM,42-48,80-104",
      },
    ],
    spotOf: ({ path, place }) => {
      const [part, dimension, index] = path;
      if (part !== "readings") return inTable("chart", place);
      return inList(dimension === "hip-belt-girth" ? "hips" : "torso", index);
    },
  },
  "read-chart": {
    call: "readChart",
    fields: [
      {
        name: "text",
        kind: "table",
        start:
          "size,torso-length (cm),hip-belt-girth (in),capacity (L)\nS,38-43,27 1/2-36,43\nM,43-48,36-41,45\nL,48+,41+,48",
      },
    ],
    spotOf: ({ place }) => inTable("text", place),
  },
  "choose-for-table": {
    call: "chooseForTable",
    fields: [
      {
        name: "people",
        kind: "table",
        start: "wren,40.3 cm,39.8 cm,40.6 cm\ntobias,17 3/4 in,17 5/8 in\nada,44.1 cm,44",
      },
      { name: "chart", kind: "table", start: "size,torso-length (cm)\nS,38-43\nM,42-48" },
    ],
    spotOf: ({ path, place }) => inTable(path.includes("readings") ? "people" : "chart", place),
  },
  "average-readings": {
    call: "averageReadings",
    fields: [
      { name: "texts", kind: "list", start: "43.1 cm\n44.2 cm\n43.6 cm" },
      { name: "measuredBy", kind: "choice", start: "helper", choices: ["self", "helper"] },
    ],
    spotOf: ({ path }) => inList("texts", path[0]),
  },
  "who-is-served": {
    call: "whoIsServed",
    fields: [
      { name: "chart", kind: "table", start: "size,torso-length (in)\nS,15-17\nM,17-19\nL,19-21" },
      { name: "people", kind: "choice", start: "women", choices: ["women", "men"] },
    ],
    spotOf: ({ place }) => inTable("chart", place),
  },
  "study-error": {
    call: "studyError",
    fields: [
      {
        name: "table",
        kind: "table",
        start:
          "person,heron 1 (mm),heron 2 (mm),magpie 1 (mm),magpie 2 (mm)\nana,430,434,440,436\nbo,480,480,482,486\ncleo,455,453,459,457\ndov,412,416,414,420",
      },
    ],
    spotOf: ({ place }) => inTable("table", place),
  },
  "read-length": {
    call: "readLength",
    fields: [{ name: "text", kind: "text", start: "18 3/8 in" }],
    spotOf: () => ({ field: "text" }),
  },
};

/** What the fields of an example hold at first. */
export function startOf(id: ExampleId): Entries {
  return Object.fromEntries(examples[id].fields.map(({ name, start }) => [name, start]));
}

/** The texts of a list: its lines without the blank ones. */
export function listOf(entry: string | undefined): readonly string[] {
  return (entry ?? "")
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
}

function inList(field: string, index: string | number | undefined): IssueSpot {
  return typeof index === "number" ? { field, entry: index + 1 } : { field };
}

function inTable(field: string, place: outcome.Place | undefined): IssueSpot {
  return place === undefined ? { field } : { field, line: place.line };
}
