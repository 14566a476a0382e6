import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "study-not-text": {
    severity: "error",
    message: "the study is {received}, not text",
    expected: "the text of a table or of JSON",
  },
  "study-empty": {
    severity: "error",
    message: "the study has no line that names its columns",
    expected: "a line of column names and lines of readings",
  },
  "study-too-large": {
    severity: "error",
    message: "the study has a size of {characters}, more than the {limit} that are read",
    expected: "the readings of one study",
  },
  "study-json-syntax": {
    severity: "error",
    message: "the study stops being JSON at {received}",
    expected: "JSON, such as [{“subject”: “mia”, “measurer”: “Ann”, “repeat”: 1, “value”: “43.2 cm”}]",
  },
  "study-json-shape": {
    severity: "error",
    message: "the study has no list of readings",
    expected: "a list of objects, or an object with such a list as “readings”",
  },
  "study-json-row": {
    severity: "error",
    message: "{received} stands where a reading should, so it was left out",
    expected: "an object with subject, measurer, repeat and value",
  },
  "study-key-repeated": {
    severity: "error",
    message: "the key stands here a second time, with {received}; the first counts",
    expected: "each key once in an object",
  },
  "study-quote": {
    severity: "error",
    message: "the quotation marks of {received} do not fit",
    expected: 'a quoted cell such as "43,2", with each quotation mark inside it doubled',
  },
  "study-column-missing": {
    severity: "error",
    message: "no column holds the {role}; the columns are {columns}",
    expected: "a column such as {role}",
  },
  "study-column-repeated": {
    severity: "error",
    message: "{received} is a second column for the {role}, so it was left out",
    expected: "one column for the {role}",
  },
  "study-column-unread": {
    severity: "error",
    message: "{received} does not say whose reading the column holds, so it was left out",
    expected: "a name and a number from 1 to {limit}, such as “Ann 1 (cm)”",
  },
  "study-column-unused": {
    severity: "warning",
    message: "{received} is not used",
    expected: "subject, measurer, repeat, value or unit",
  },
  "study-values-several": {
    severity: "error",
    message: "several columns may hold the readings of {dimension}: {columns}",
    expected: "the dimension of one of them as an option, or one column of values",
  },
  "study-dimension-disagrees": {
    severity: "error",
    message: "{received} is about the {other}, not the {dimension}",
    expected: "readings of one dimension",
  },
  "study-dimension-unclear": {
    severity: "warning",
    message: "{received} may mean the {candidates}",
    expected: "the dimension as an option, or a header that names one",
  },
  "study-dimension-unstated": {
    severity: "warning",
    message:
      "nothing says which dimension was measured, so no reading could be held against what people have",
    expected: "the dimension in a header or as an option, such as {examples}",
  },
  "study-cell-beyond": {
    severity: "error",
    message: "{received} stands beyond the last of the {columns} columns, so it was left out",
    expected: "as many cells as there are columns",
  },
  "study-subject-blank": {
    severity: "error",
    message: "the row does not say who was measured, so it was left out",
    expected: "a name or a number for the subject",
  },
  "study-measurer-blank": {
    severity: "error",
    message: "the row does not say who measured, so it was left out",
    expected: "a name or a number for the measurer",
  },
  "study-repeat-unreadable": {
    severity: "error",
    message: "{received} does not say which repeat it is, so the row was left out",
    expected: "a whole number from 1 to {limit}",
  },
  "study-unit-missing": {
    severity: "error",
    message: "none of the {count} readings under “{column}” has a unit",
    expected: "a unit in the header, such as “{column} (cm)”, or in each cell, such as {number} cm",
  },
  "study-cell-repeated": {
    severity: "error",
    message:
      "{received} is a second entry for reading {repeat} of {subject} by {measurer}, after {first}; it was set aside",
    expected: "one entry for each subject, measurer and repeat",
  },
  "study-reading-impossible": {
    severity: "error",
    message:
      "{received}, reading {repeat} of {subject} by {measurer}, is outside what the {dimension} can be in people ({lowestMm} to {highestMm} mm); it was set aside",
    expected: "a reading of the right dimension in the right unit",
  },
  "study-reading-kept": {
    severity: "warning",
    message:
      "{received}, reading {repeat} of {subject} by {measurer}, is outside what the {dimension} can be in people ({lowestMm} to {highestMm} mm); it was kept",
    expected: "a reading of the right dimension in the right unit",
  },
  "study-cells-missing": {
    severity: "warning",
    message: "{count} of {cells} cells hold no reading of {what}",
    expected: "a reading of every subject by every measurer at every repeat; what is missing is allowed for",
  },
  "study-names-alike": {
    severity: "warning",
    message: "{received} and {other} are taken for two of the {kind}",
    expected: "one way to write each name",
  },
  "study-no-readings": {
    severity: "error",
    message: "none of the {received} cells holds a reading that can be used; {setAside} were set aside",
    expected: "readings such as 43.2 cm",
  },
} as const;

/** What can be wrong with the text of a study. */
export const studyIssues: typeof catalogue = defineIssues(catalogue);
