import { defineIssues } from "@tapewise/outcome";
import { cellIssues } from "./cell-issues.ts";

const catalogue = {
  // The text as a whole.
  "chart-empty": {
    severity: "error",
    message: "there is nothing to read",
    expected: "a size chart as JSON or CSV",
  },
  "chart-too-large": {
    severity: "error",
    message: "the text has {characters} characters, which is too much for a size chart",
    expected: "at most {limit} characters",
  },
  "chart-not-text": {
    severity: "error",
    message: "this is not text: it has characters that no text has",
    expected: "a size chart as JSON or CSV, saved as text in UTF-8",
  },
  "chart-too-many-sizes": {
    severity: "error",
    message: "there are {sizes} sizes, which is too many for a size chart",
    expected: "at most {limit} sizes",
  },
  "chart-too-many-columns": {
    severity: "error",
    message: "there are {columns} columns; those from this one on were left out",
    expected: "at most {limit} columns",
  },
  "chart-json-syntax": {
    severity: "error",
    message: "the JSON is broken here, at {received}",
    expected:
      "JSON: names and texts in double quotation marks, finite numbers, no comma before a closing bracket",
  },
  "chart-json-unfinished": {
    severity: "error",
    message: "the JSON ends before all its brackets and quotation marks are closed",
    expected: "a closing bracket or quotation mark",
  },
  "chart-json-too-deep": {
    severity: "error",
    message: "brackets are nested deeper than {limit} levels here",
    expected: "at most {limit} levels; a chart needs five",
  },
  "chart-csv-quote": {
    severity: "warning",
    message: "the quotation mark that opens this cell has no partner at the cell's end",
    expected: 'a quoted cell such as "38,5-43", with each quotation mark inside it doubled',
  },
  "chart-csv-transposed": {
    severity: "error",
    message: "the sizes stand in the first line and the dimensions in the first column",
    expected: "one line for each size: swap lines and columns",
  },
  "chart-csv-size-column-missing": {
    severity: "error",
    message: "the first column is {received}, and no column is called size",
    expected: "the names of the sizes in the first column",
  },

  // Parts of a chart.
  "chart-value-kind": {
    severity: "error",
    message: "{what} cannot be {received}",
    expected: "{form}",
  },
  "chart-key-unknown": {
    severity: "error",
    message: "{what} has no part called {key}{hint}",
    expected: "{known}",
  },
  "chart-key-repeated": {
    severity: "error",
    message: "{key} is stated twice; the first one counts, this one was left out",
    expected: "each part once",
  },
  "chart-word-unknown": {
    severity: "error",
    message: "{what} cannot be {received}{hint}",
    expected: "{known}",
  },
  "chart-text-blank": {
    severity: "error",
    message: "{what} is blank",
    expected: "text, or nothing at all",
  },
  "chart-unnamed": {
    severity: "warning",
    message: "the chart has no name",
    expected: "a name, so that recommendations can say which chart they mean",
  },
  "chart-no-sizes": {
    severity: "error",
    message: "the chart has no size that can be read",
    expected: "at least one size with a name",
  },
  "chart-no-dimension": {
    severity: "error",
    message: "no size states a body dimension that can be read",
    expected: "at least one range or length, such as a torso length of 38-43 cm",
  },
  "chart-size-unnamed": {
    severity: "error",
    message: "a size has no name and was left out",
    expected: "a name such as M",
  },
  "chart-size-repeated": {
    severity: "error",
    message: "the size {received} is stated twice; the first one counts, this one was left out",
    expected: "each size once: sizes with one name are never merged",
  },
  "chart-quantity-unreadable": {
    severity: "error",
    message: "{received} cannot be read as {what}",
    expected: "{form}",
  },

  // Columns and rows of CSV.
  "chart-column-unknown": {
    severity: "error",
    message: "the column {received} is not known and was left out{hint}",
    expected: "a body dimension such as torso-length, or capacity, mass or harness",
  },
  "chart-column-ambiguous": {
    severity: "error",
    message: "the column {received} may mean {candidates}, and was left out",
    expected: "one of {candidates}",
  },
  "chart-column-repeated": {
    severity: "error",
    message: "the column {received} states {dimension} in {unit} again and was left out",
    expected: "one column for each dimension and unit",
  },
  "chart-column-unit-unknown": {
    severity: "error",
    message: "the column {received} has a unit that does not suit {dimension}, and was left out",
    expected: "a unit such as {units}",
  },
  "chart-column-unit-unread": {
    severity: "error",
    message: "“{unit}” is no unit that is read, and no cell names one: the column {received} was left out",
    expected: "a unit such as {units} in the header",
  },
  "chart-row-ragged": {
    severity: "error",
    message: "this line has {cells} of {columns} cells; {kept}",
    expected: "{columns} cells",
  },
  "chart-hip-unstated": {
    severity: "warning",
    message: "{received} does not say which girth: around the iliac crests, or the widest one",
    expected: "hip-belt-girth (around the crests) or hip-girth (the widest)",
  },

  // Cells and ranges.
  "chart-range-empty": {
    severity: "error",
    message: "a range states neither an end nor a nominal length",
    expected: "from, to or both, or nominal",
  },
  "chart-nominal-outside": {
    severity: "error",
    message: "the nominal length {received} lies outside the range stated with it",
    expected: "a nominal length between from and to",
  },
  "chart-nominal-alone": {
    severity: "error",
    message:
      "{size} states one length, {nominalMm} mm, and no other size lies beside it, so its range cannot be inferred",
    expected: "a range, or a second size to measure the spacing from",
  },

  // Findings of the audit.
} as const;

/** What keeps a chart, or a part of it, from being read. */
export const readingIssues: typeof cellIssues & typeof catalogue = defineIssues({
  ...cellIssues,
  ...catalogue,
});
