import { defineIssues } from "@tapewise/outcome";
import { temCatalogue } from "./reliability/tem-catalogue.ts";
import { studyCatalogue } from "./study/catalogue.ts";

const catalogue = {
  "readings-missing": {
    severity: "error",
    message: "there is no reading of the {dimension} that can be used",
    expected: "at least one reading, such as “43.2 cm”",
  },
  "readings-not-a-list": {
    severity: "error",
    message: "the readings of the {dimension} are {received}, not a list",
    expected: "a list of readings, such as [“43.2 cm”, “44 cm”]",
  },
  "error-model-invalid": {
    severity: "error",
    message: "the stated error has {received} for {part}",
    expected: "a number of millimetres from 0 to {largestMm}",
  },
  "conditions-invalid": {
    severity: "error",
    message: "{part} cannot be {received}",
    expected: "{choices}",
  },
  "reading-alone": {
    severity: "warning",
    message: "there is only one reading of the {dimension}, so a slip in it would not show",
    expected: "three readings, the bones found anew each time",
  },
  "reading-apart": {
    severity: "warning",
    message: "{received} lies {differenceMm} mm from the middle of all readings of the {dimension}",
    expected:
      "readings that lie within about {usualMm} mm of each other; read again before you leave one out",
  },
  "reading-unit-suspect": {
    severity: "warning",
    message: "{received} is unlikely for the {dimension}; {other} would be likely",
    expected: "the unit that the tape shows",
  },
  "reading-implausible": {
    severity: "warning",
    message: "{received} is outside what surveys found for the {dimension} ({lowestMm} to {highestMm} mm)",
    expected: "a reading of the right dimension in the right unit",
  },
  "readings-mixed-units": {
    severity: "warning",
    message: "the readings of the {dimension} are partly in feet or inches and partly in metric units",
    expected: "one side of the tape for all readings",
  },
  "readings-scatter": {
    severity: "warning",
    message:
      "the readings of the {dimension} scatter by {sampleMm} mm (standard deviation), more than the {usualMm} mm usual for this way of measuring",
    expected: "a closer look at how the bones are found and the tape is held",
  },
  "readings-drift": {
    severity: "warning",
    message: "the readings of the {dimension} drift: from the first to the last by {driftMm} mm",
    expected: "readings without a trend; stand up, relax and begin anew",
  },
  "readings-rounded": {
    severity: "warning",
    message:
      "all {count} readings of the {dimension} are multiples of {coarse}, though they are written to {fine}",
    expected:
      "readings to the nearest mark of the tape; the estimate counts the coarser step, unless the error is stated",
  },
  "readings-too-alike": {
    severity: "warning",
    message:
      "all {count} readings of the {dimension} are the same, which real readings seldom are; one may have been remembered",
    expected: "each reading taken afresh, without a look at the one before",
  },
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
  "agreement-measurer-unknown": {
    severity: "error",
    message: "the study has no measurer {received}",
    expected: "one of {measurers}",
  },
  "agreement-subjects-few": {
    severity: "error",
    message: "{count} subjects were read by both {first} and {second}",
    expected: "three subjects or more that both have read",
  },
  "agreement-no-scatter": {
    severity: "error",
    message: "the differences between {first} and {second} are all the same",
    expected: "readings taken afresh, without a look at the other one's",
  },
  "agreement-subject-unpaired": {
    severity: "warning",
    message: "{subject} was not read by both {first} and {second} and is left out",
    expected: "a reading by each of the two",
  },
} as const;

/** What can be wrong with, or doubtful about, readings. Errors keep an estimate from being made; warnings are questions. */
export const measurementIssues: typeof catalogue & typeof studyCatalogue & typeof temCatalogue = defineIssues(
  {
    ...catalogue,
    ...studyCatalogue,
    ...temCatalogue,
  },
);
