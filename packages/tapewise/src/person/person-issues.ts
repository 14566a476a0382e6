import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "person-readings-missing": {
    severity: "error",
    message: "there is no reading of any dimension",
    expected: "readings of at least one dimension, such as the torso length",
  },
  "person-prior-needs-cut": {
    severity: "warning",
    message: "what is known of people beforehand was not used, because no cut is given",
    expected: "the cut, women or men, whose survey figures come nearest",
  },
  "person-rule-unusable": {
    severity: "error",
    message: "nobody can measure with a rule of {received}",
    expected: "{wanted}, with its unit",
  },
  "person-statures-differ": {
    severity: "warning",
    message:
      "the stature is given as {received} and read as {readMm} mm: the survey figures go by the first, charts by the second",
    expected: "statures at most {limitMm} mm apart",
  },
  "person-stature-not-surveyed": {
    severity: "warning",
    message:
      "nobody among the surveyed {label} had a stature of {received}, so that their figures {use}; for a growing child, let a professional fitter choose",
    expected: "a stature from {fromMm} to {toMm} mm where survey figures are to count",
  },
  "person-stature-implausible": {
    severity: "warning",
    message: "a stature of {received} is outside what people grow to, so that nothing was concluded from it",
    expected: "the standing height, in the unit of the tape",
  },
} as const;

/** What can be wrong with, or doubtful about, a person whose line is well formed; all that a page asks needs no more. */
export const personIssues: typeof catalogue = defineIssues(catalogue);
