import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "components-subjects-few": {
    severity: "error",
    message:
      "the study has readings of {count} subjects, and how subjects differ cannot be seen in fewer than two",
    expected: "readings of two subjects or more; ten and up are better",
  },
  "components-measurers-few": {
    severity: "error",
    message:
      "the study has {count} measurers with readings, and how measurers differ cannot be seen in fewer than two",
    expected: "readings of two measurers or more, or that term left out",
  },
  "components-repeats-few": {
    severity: "error",
    message:
      "too few subjects were read more than once by several measurers to tell the change of measurers from subject to subject from the error of a reading",
    expected: "repeated readings of several subjects by several measurers, or that term left out",
  },
  "components-error-unseen": {
    severity: "error",
    message: "the {count} readings leave nothing to see the error of a reading in",
    expected: "subjects who were read more than once",
  },
  "components-no-scatter": {
    severity: "error",
    message:
      "the readings show no error: subjects, measurers and their pairs explain every one of them exactly",
    expected: "readings taken afresh each time, without a look at the one before",
  },
  "component-zero": {
    severity: "warning",
    message:
      "the variance component “{component}” is estimated as 0: it is too small to be seen in this study",
    expected: "more subjects or measurers, where that component matters",
  },
  "components-unconnected": {
    severity: "warning",
    message: "the study falls into {parts} parts that share neither a subject nor a measurer",
    expected: "subjects who were read by measurers of both parts",
  },
  "icc-study-small": {
    severity: "error",
    message: "an intraclass correlation cannot be had from {subjects} subjects and {measurers} measurers",
    expected: "two subjects and two measurers or more",
  },
  "icc-study-incomplete": {
    severity: "error",
    message:
      "{cells} cells of the study lack readings; the first is that of {subject} by {measurer} with {count} of {repeats}",
    expected: "a complete study, or correlations from variance components",
  },
  "icc-subjects-alike": {
    severity: "error",
    message: "all subjects have the same mean, so that there is nothing to tell apart",
    expected: "subjects of different lengths",
  },
} as const;

/** What keeps the variance of a study from being parted, or its parts from being believed. */
export const componentIssues: typeof catalogue = defineIssues(catalogue);
