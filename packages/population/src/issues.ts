import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "survey-not-text": {
    severity: "error",
    message: "the survey is {received}, not text",
    expected: "the text of a CSV file",
  },
  "survey-empty": {
    severity: "error",
    message: "the survey has no line that names its columns",
    expected: "a line of column names and a line for each person",
  },
  "survey-quote-open": {
    severity: "error",
    message: "the quotation mark that opens this cell is never closed; the rest of the file was not read",
    expected: 'a quoted cell such as "38,5", with each quotation mark inside it doubled',
  },
  "survey-column-missing": {
    severity: "error",
    message: "there is no column {received}, so {variable} was left out",
    expected: "one of the columns {columns}",
  },
  "survey-column-repeated": {
    severity: "error",
    message: "there are {count} columns {received}, so {variable} was left out",
    expected: "one column of each name",
  },
  "survey-row-ragged": {
    severity: "error",
    message: "this line has {cells} cells where {columns} are named, so the person was left out",
    expected: "{columns} cells",
  },
  "survey-cell-missing": {
    severity: "warning",
    message: "{column} has no value here",
    expected: "a value, or a person who is left out where it is needed",
  },
  "survey-cell-unreadable": {
    severity: "error",
    message: "{received} under {column} cannot be read: {reason}",
    expected: "a number of {unit}",
  },
  "survey-difference-not-positive": {
    severity: "error",
    message: "{column} less {minus} is {received} mm, which is no length",
    expected: "a greater length under {column} than under {minus}",
  },
  "survey-weight-unreadable": {
    severity: "error",
    message: "the weight {received} cannot be used, so the person was left out",
    expected: "a number above 0",
  },
  "survey-value-implausible": {
    severity: "warning",
    message: "{received} mm is outside what is plausible for {variable} ({lowestMm} to {highestMm} mm)",
    expected: "a value of the right dimension in the right unit; it was kept",
  },
  "survey-unit-suspect": {
    severity: "warning",
    message: "{count} of {people} values of {variable} are outside what is plausible for it in {unit}",
    expected: "the unit in which the column is written",
  },
  "survey-id-repeated": {
    severity: "warning",
    message: "the person {received} is there already, in line {line}",
    expected: "one line for each person; both were kept",
  },
  "survey-no-people": {
    severity: "error",
    message: "no person of the survey can be used",
    expected: "at least one line with a value that can be read",
  },
  "survey-people-incomplete": {
    severity: "warning",
    message: "{count} of {people} people lack a value of {variables} and were left out",
    expected: "a value of each variable for everybody",
  },
  "survey-too-few-people": {
    severity: "error",
    message: "{people} people have every value that is needed, which is too few",
    expected: "at least {least} people",
  },
  "survey-no-spread": {
    severity: "error",
    message: "{variable} is the same for everybody",
    expected: "variables that differ among people",
  },
  "reading-unlikely-given": {
    severity: "warning",
    message:
      "{received} mm for the {dimension} is {side} what is usual for {label} by {differenceMm} mm (usual: {usualMm} mm, standard deviation {sdMm} mm)",
    expected: "another look at the landmarks, the unit and what else is known of the person",
  },
} as const;

/** What can be wrong with, or doubtful about, a survey, or a reading seen beside what else is known. */
export const populationIssues: typeof catalogue = defineIssues(catalogue);
