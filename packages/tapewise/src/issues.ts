import { defineIssues } from "@tapewise/outcome";
import { personIssues } from "./person/person-issues.ts";

const catalogue = {
  "person-not-an-object": {
    severity: "error",
    message: "a person is described by an object, but this is {received}",
    expected: 'an object such as {"readings":{"torso-length":["43.2 cm"]}}',
  },
  "person-field-misspelt": {
    severity: "error",
    message: "“{field}” is no field of a person; did you mean “{suggestion}”?",
    expected: "one of {fields}",
  },
  "person-field-unknown": {
    severity: "warning",
    message: "“{field}” is no field of a person and was not used",
    expected: "one of {fields}",
  },
  "person-field-repeated": {
    severity: "error",
    message: "“{field}” stands here more than once, and only the last one would count",
    expected: "every field once",
  },
  "person-field-missing": {
    severity: "error",
    message: "“{field}” is missing",
    expected: "{wanted}",
  },
  "person-field-invalid": {
    severity: "error",
    message: "{received} is not right for “{field}”",
    expected: "{wanted}",
  },
  "person-choice-unknown": {
    severity: "error",
    message: "{received} is not known for “{field}”{hint}",
    expected: "one of {choices}",
  },
  "person-dimension-unknown": {
    severity: "error",
    message: "“{field}” is no dimension that is known{hint}",
    expected: "one of {choices}",
  },
  "person-readings-too-many": {
    severity: "error",
    message: "there are {count} readings of the {dimension}",
    expected: "at most {limit} readings of a dimension",
  },
  "batch-line-not-json": {
    severity: "error",
    message: "line {line} is not JSON",
    expected: "one JSON object a line",
  },
  "batch-line-not-utf8": {
    severity: "error",
    message: "line {line} is not UTF-8 text",
    expected: "text in UTF-8",
  },
  "batch-line-too-long": {
    severity: "error",
    message: "line {line} is longer than {limit} bytes",
    expected: "one person a line, in at most {limit} bytes",
  },
  "batch-resume-differs": {
    severity: "error",
    message:
      "{received} cannot be gone on with: its last answer is not the one that line {line} of the input gets now",
    expected: "the same people, charts and options as when it was begun",
  },
  "batch-resume-ahead": {
    severity: "error",
    message:
      "{received} cannot be gone on with: it holds {lines} answers, {left} more than the input has people",
    expected: "the same people as when it was begun",
  },
  "batch-chart-name-repeated": {
    severity: "warning",
    message: "more than one chart is called {received}, so that each is named with its file",
    expected: "a name of its own for every chart",
  },
  "file-missing": {
    severity: "error",
    message: "there is no file {received}",
    expected: "the path of a file",
  },
  "file-is-directory": {
    severity: "error",
    message: "{received} is a directory",
    expected: "the path of a file",
  },
  "file-not-outcome-log": {
    severity: "error",
    message: "{received} is no outcome log: none of its lines is an outcome",
    expected: "a log of “tapewise log add”, as text in UTF-8",
  },
  "file-unreadable": {
    severity: "error",
    message: "{received} cannot be read ({reason})",
    expected: "a file that you may read",
  },
  "file-too-large": {
    severity: "error",
    message: "{received} is larger than {limit} bytes",
    expected: "a file of at most {limit} bytes",
  },
  "file-empty": {
    severity: "error",
    message: "{received} is empty",
    expected: "a file with something in it",
  },
  "file-utf16": {
    severity: "error",
    message: "{received} is saved as UTF-16",
    expected: "the same file saved as UTF-8; in a spreadsheet, save as “CSV UTF-8”",
  },
  "file-binary": {
    severity: "error",
    message: "{received} is not text: byte {offset} is zero",
    expected: "a text file in UTF-8",
  },
  "file-not-utf8": {
    severity: "error",
    message: "{received} is not UTF-8 text",
    expected: "a text file in UTF-8; in a spreadsheet, save as “CSV UTF-8”",
  },
  "file-unwritable": {
    severity: "error",
    message: "{received} cannot be written ({reason})",
    expected: "a path in a folder that you may write to",
  },
  "check-length-unknown": {
    severity: "error",
    message: "nothing is known of the {dimension}, by which {chart} is looked at",
    expected: "readings of the {dimension}, or a cut with --prior reference",
  },
  "log-chart-not-found": {
    severity: "warning",
    message: "{what} of {received}, whose chart was not given, and {were} not used",
    expected: "the chart that the sizes were taken from, under the same maker and name",
  },
  "log-chart-ambiguous": {
    severity: "warning",
    message:
      "{charts} charts that were given are called {received}, so that it cannot be told of which of them an outcome in the log is; not used: {count}",
    expected: "a maker and a name for each chart that no other has",
  },
  "log-chart-named-by-file": {
    severity: "warning",
    message:
      "the chart in {file} states no name, so that outcomes of “{received}”, which is only the name of the file, count as its own",
    expected: "a name in the chart that no other has, “# chart: …” in CSV or “chart” in JSON, and its maker",
  },
  "log-exchange-same-size": {
    severity: "warning",
    message: "{received} was exchanged for the same size, and no reason apart from the fit is given",
    expected: "another size, or --reason not-about-fit",
  },
  "log-exchange-against-reason": {
    severity: "warning",
    message:
      "the reason is {reason}, and yet {size} was exchanged for {received}, which the chart has for {other} people",
    expected: "another reason, or a size for {wanted} people",
  },
  "lend-member-not-json": {
    severity: "error",
    message: "line {line} is not JSON",
    expected: "one member a line, in the form that “tapewise batch” reads",
  },
  "lend-member-repeated": {
    severity: "error",
    message: "{received} stands in the list of members twice, and the second line was left out",
    expected: "an id of their own for every member",
  },
  "shelf-column-missing": {
    severity: "error",
    message: "the shelf has no column “{column}”",
    expected: "the columns chart, size and count",
  },
  "shelf-row-ragged": {
    severity: "error",
    message: "this line has {count} of {columns} cells and was not used",
    expected: "{columns} cells",
  },
  "shelf-quote-open": {
    severity: "error",
    message: "the quotation marks of {received} do not fit",
    expected: "a mark before and behind the cell, and double ones within it",
  },
  "shelf-count-invalid": {
    severity: "error",
    message: "{received} is no number of packs",
    expected: "a whole number from 0 to {most}",
  },
  "shelf-chart-unknown": {
    severity: "error",
    message: "no chart that was given is called {received}{hint}",
    expected: "one of {charts}",
  },
  "shelf-size-unknown": {
    severity: "error",
    message: "{chart} has no size {received}{hint}",
    expected: "one of {sizes}",
  },
  "shelf-without-packs": {
    severity: "error",
    message: "there is no pack on the shelf",
    expected: "a line with chart, size and count for each size that there is",
  },
  "shelf-pack-repeated": {
    severity: "error",
    message: "{received} stands on the shelf twice, and the second line was not used",
    expected: "one line for each size of a chart",
  },
  "outcome-log-busy": {
    severity: "error",
    message: "{received} is being written by {who} and did not come free within {seconds} s",
    expected: "to be tried again; if nobody writes the log any more, “{lock}” may be removed",
  },
  "offset-too-large": {
    severity: "error",
    message: "{received} is more than the ranges of a chart can be off",
    expected: "at most {limit} mm to either side",
  },
  "study-picture-unknown": {
    severity: "error",
    message: "there is no picture of {received} to draw from this study; its measurers are {measurers}",
    expected: "a picture that the study has figures for, of two of its measurers",
  },
  "plan-chart-without-dimension": {
    severity: "error",
    message: "{received} sizes nothing by the {dimension}, so that nothing can be planned for it",
    expected: "a chart with lengths of the {dimension}",
  },
  "file-not-json": {
    severity: "error",
    message: "{received} is not JSON",
    expected: "one JSON object that describes a person",
  },
} as const;

type TapewiseIssues = typeof personIssues & typeof catalogue;

/** What each issue code of the command and of the batch contract means. */
export const tapewiseIssues: TapewiseIssues = { ...personIssues, ...defineIssues(catalogue) };
