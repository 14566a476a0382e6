import type { ExampleId } from "../../try-it/examples.ts";

/** What an example says of itself: its fields, and its answer in a sentence. `{name}` is filled in. */
export interface ExampleWords {
  readonly fields: Readonly<Record<string, { readonly label: string; readonly hint?: string }>>;
  readonly sentences: Readonly<Record<string, string>>;
}

const chart = { label: "Size chart", hint: "CSV; the header names the dimension and its unit" };

const examples: Readonly<Record<ExampleId, ExampleWords>> = {
  "choose-size": {
    fields: {
      torso: { label: "Torso length", hint: "one reading a line, each with its unit" },
      hips: { label: "Hip-belt girth", hint: "one reading a line, each with its unit" },
      chart,
    },
    sentences: {
      fits: "Take {pick}: its chance to fit is {chance}.",
      "two-sizes-fit": "More than one size fits. Take {pick}: its chance to fit is {chance}.",
      "between-sizes": "Between sizes. {pick} is the nearest, with a chance to fit of {chance}.",
      "outside-the-range":
        "Outside the range of this chart. {pick} is the nearest, with a chance to fit of {chance}.",
      "measure-again":
        "Measure again before you decide. So far {pick} is ahead, with a chance to fit of {chance}.",
    },
  },
  "read-chart": {
    fields: { text: { label: "Size chart", hint: "CSV or JSON" } },
    sentences: { read: "Sizes read: {sizes}. Errors: {wrong}. Worth a look: {odd}." },
  },
  "choose-for-table": {
    fields: {
      people: { label: "People", hint: "one a line: a name, then readings of the torso length" },
      chart,
    },
    sentences: { chosen: "People in the table: {people}. With a size: {chosen}." },
  },
  "average-readings": {
    fields: {
      texts: { label: "Readings of the torso length", hint: "one a line, each with its unit" },
      measuredBy: { label: "Who measures" },
    },
    sentences: {
      estimated:
        "The torso is {mean} mm long, with a standard uncertainty of {uncertainty} mm: between {lower} and {upper} mm in nineteen of twenty cases. No number of such readings brings the uncertainty below {lasting} mm.",
    },
  },
  "who-is-served": {
    fields: { chart, people: { label: "People of the survey" } },
    sentences: { served: "This chart serves {served} of the {people} of the survey." },
  },
  "study-error": {
    fields: {
      table: {
        label: "Study",
        hint: "one row for each person, one column for each reading: who read, which reading, the unit",
      },
    },
    sentences: {
      both: "People: {people}. Technical error of one measurer {within} mm, of anybody {total} mm.",
      within: "People: {people}. Technical error of one measurer {within} mm.",
      between: "People: {people}. Technical error between measurers {total} mm.",
    },
  },
  "read-length": {
    fields: { text: { label: "A length as you write it", hint: "with its unit" } },
    sentences: { read: "Read as {mm} mm, which is {cm} or {inches}." },
  },
};

/** The editor beside an example of the documentation. */
export const tryIt = {
  title: "Try it: change what {call} is called with",
  hint: "The code above runs in your browser, with what you enter here. Nothing is sent anywhere.",
  reset: "Back to the example",
  code: "The call and what it returns",
  noValue: "There is no value: see what is said at the entries.",
  line: "line {line}",
  entry: "entry {entry}",
  elsewhere: "Try it: {call} uses this, and you can change what it is called with",
  explain: "what {code} means",
  examples,
};
