import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  // Rows of the log.
  "outcome-line-not-json": {
    severity: "error",
    message: "the line is not JSON",
    expected: "one outcome a line, as a JSON object",
  },
  "outcome-line-torn": {
    severity: "error",
    message: "the last line breaks off: whoever wrote it was stopped",
    expected: "a whole line with its line end; what is appended next begins a line of its own",
  },
  "outcome-line-not-utf8": {
    severity: "error",
    message: "the line is not UTF-8 text",
    expected: "text in UTF-8",
  },
  "outcome-line-too-long": {
    severity: "error",
    message: "the line is longer than {limit} bytes",
    expected: "one outcome a line, in at most {limit} bytes",
  },
  "outcome-not-an-object": {
    severity: "error",
    message: "an outcome is described by an object, but this is {received}",
    expected:
      'an object such as {"v":1,"at":"2026-05-04","product":{"chart":"…"},"size":"M","outcome":"kept"}',
  },
  "outcome-version-newer": {
    severity: "error",
    message: "the row is of version {received}, which is newer than this library",
    expected: "a row of version {known}, or a newer release of the library; the row stays in the log",
  },
  "outcome-version-unknown": {
    severity: "error",
    message: "{received} is no version of a row",
    expected: 'the version, "v": {known}',
  },
  "outcome-field-missing": {
    severity: "error",
    message: "“{field}” is missing",
    expected: "{wanted}",
  },
  "outcome-field-invalid": {
    severity: "error",
    message: "{received} is not right for “{field}”",
    expected: "{wanted}",
  },
  "outcome-field-unknown": {
    severity: "warning",
    message: "“{field}” is no field of an outcome and was not used{hint}",
    expected: "one of {fields}",
  },
  "outcome-kept-yet-exchanged": {
    severity: "error",
    message: "the pack was kept, and yet “{field}” is given",
    expected: "“{field}” only where the outcome is exchanged",
  },
  "outcome-person-identifying": {
    severity: "warning",
    message: "the person looks like {kind}",
    expected: "a pseudonym that means nothing to others; names and addresses are not needed",
  },
  "outcome-estimate-implausible": {
    severity: "warning",
    message: "{received} mm is no {dimension} that people have",
    expected: "millimetres, from {fromMm} to {toMm}",
  },
  "outcome-id-repeated": {
    severity: "warning",
    message: "a row with the id {received} came before; this one was not counted again",
    expected: "an id that no other row has",
  },
  // The check on the body.
  "check-size-unknown": {
    severity: "error",
    message: "the chart has no {kind} {received}",
    expected: "a {kind} of the chart: {known}",
  },
  // Outcomes as evidence about charts.
  "evidence-chart-differs": {
    severity: "error",
    message: "the outcome is of {received} and the chart is of {known}",
    expected: "the chart that the size was taken from",
  },
  "evidence-size-unknown": {
    severity: "error",
    message: "{chart} has no size {received}",
    expected: "a size of the chart: {known}",
  },
  "evidence-not-usable": {
    severity: "warning",
    message: "“{received}” says nothing of {chart}, for its {part} in {size} or the body there is not known",
    expected: "a range of the {part} in the chart and an estimate of what it goes by",
  },
  // Lending.
  "lending-size-not-judged": {
    severity: "warning",
    message: "{member} was not held against {received}, which is therefore not lent to them",
    expected: "a recommendation for every chart on the shelf",
  },
  "lending-chart-repeated": {
    severity: "error",
    message: "{member} comes with more than one recommendation of {received}",
    expected: "one recommendation of each chart, and charts that are called differently",
  },
  // Returns.
  "returns-offset-not-judged": {
    severity: "warning",
    message: "the offset of the {dimension} was not used, for {chart} is not judged by it here",
    expected: "offsets of what is judged: {judged}",
  },
} as const;

/** What can be wrong with outcomes, with a shelf to lend from, and with what follows a choice. */
export const afterwardsIssues: typeof catalogue = defineIssues(catalogue);
