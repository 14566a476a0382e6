import { outcome } from "tapewise";

const catalogue = {
  "sql-belief-missing": {
    severity: "error",
    message: "a mean or a standard deviation is missing, so that nothing was chosen for this person",
    expected: "a mean and a standard deviation of every dimension that the query asks for",
  },
  "sql-belief-invalid": {
    severity: "error",
    message: "a mean is not above 0, or a standard deviation is below 0, or one of them is no length at all",
    expected: "a mean above 0 and a standard deviation of 0 or more, in the unit that was named",
  },
  "sql-id-repeated": {
    severity: "error",
    message: "two people have the same id, so that they cannot be told apart",
    expected: "an id of their own for every person",
  },
  "table-format-unknown": {
    severity: "error",
    message: "{received} has no ending that tells what kind of table it is",
    expected: "a path that ends in .parquet or .csv",
  },
  "table-unreadable": {
    severity: "error",
    message: "{received} cannot be read as a table: {reason}",
    expected: "a table in the format that its ending tells",
  },
  "table-unwritable": {
    severity: "error",
    message: "{received} cannot be written ({reason})",
    expected: "a path in a folder that you may write to",
  },
  "table-output-is-input": {
    severity: "error",
    message: "{received} would be read and written at the same time",
    expected: "another file for the choices",
  },
  "table-without-readings": {
    severity: "error",
    message: "no column of {received} holds readings of a dimension, or the stature",
    expected: "a column such as “torso-length (cm)”",
  },
  "table-column-missing": {
    severity: "error",
    message: "the table has no column {received}{hint}",
    expected: "one of {columns}",
  },
  "table-column-misspelt": {
    severity: "error",
    message: "“{column}” is no column that is known; did you mean “{suggestion}”?",
    expected: "a field of a person, or a dimension with its unit, such as “torso-length (cm)”",
  },
  "table-column-unknown": {
    severity: "warning",
    message: "the column “{column}” was not used",
    expected: "a field of a person, or a dimension with its unit, such as “torso-length (cm)”",
  },
  "table-column-repeated": {
    severity: "error",
    message: "more than one column holds “{field}”, and only one can count",
    expected: "one column for every field; readings of a dimension may take several",
  },
  "table-row-unreadable": {
    severity: "error",
    message: "line {line} cannot be read as a row of the table: {reason}",
    expected: "as many cells as the first line has, closed quotation marks, text in UTF-8",
  },
} as const;

/** What each issue code of this package means. */
export const duckdbIssues: typeof catalogue = /* @__PURE__ */ outcome.defineIssues(catalogue);
