import { defineIssues } from "@tapewise/outcome";

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
} as const;

/** What can be wrong with, or doubtful about, the readings of one dimension. */
export const readingIssues: typeof catalogue = defineIssues(catalogue);
