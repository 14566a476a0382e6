import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "tem-unknown": {
    severity: "error",
    message: "none of the {received} readings is of a subject that was read twice, so no error can be seen",
    expected: "subjects who were read again, by the same measurer or by another",
  },
  "tem-intra-unknown": {
    severity: "warning",
    message: "no measurer read a subject twice, so the error within measurers is not known",
    expected: "repeated readings by the same measurer",
  },
  "tem-inter-unknown": {
    severity: "warning",
    message: "no subject was read by two measurers, so the error between measurers is not known",
    expected: "subjects whom two measurers or more have read",
  },
  "tem-zero": {
    severity: "warning",
    message:
      "all {count} repeated readings are the same as their first, so that the error is smaller than the step they are written in",
    expected: "readings to a finer mark, each taken without a look at the one before",
  },
  "tem-subject-unused": {
    severity: "warning",
    message: "{received} was read once or not at all, which tells nothing of the error",
    expected: "two readings or more of each subject",
  },
  "precision-unknown": {
    severity: "error",
    message: "the {received} readings do not suffice: {needed}",
    expected: "subjects whom two measurers or more have read, and some of them read twice by one measurer",
  },
  "precision-variance-outlying": {
    severity: "warning",
    message:
      "the readings of {subject} by {measurer} scatter more than the others do (Cochran: {statistic}, beyond {critical} at {percent} %)",
    expected: "a look at these readings before they are used or left out",
  },
  "precision-mean-outlying": {
    severity: "warning",
    message:
      "the mean that {measurer} has of {subject} is apart from that of the others (Grubbs: {statistic}, beyond {critical} at {percent} %)",
    expected: "a look at these readings before they are used or left out",
  },
  "trend-unknown": {
    severity: "error",
    message: "the {received} readings do not suffice to see a trend over repeats",
    expected: "readings of two repeats or more in several pairs of subject and measurer",
  },
  "digits-unknown": {
    severity: "error",
    message: "none of the {received} readings says how it was written",
    expected: "readings that were read from text",
  },
  "digits-few": {
    severity: "warning",
    message: "{count} readings are few for {classes} digits, so the probability is a rough one",
    expected: "five readings or more for each digit",
  },
  "allowance-unknown": {
    severity: "error",
    message: "no published limit is known for {received}",
    expected: "one of {known}",
  },
  "allowance-no-pairs": {
    severity: "error",
    message: "no subject was read twice",
    expected: "subjects with two readings or more",
  },
} as const;

/** What keeps the errors of measurers from being told, and what screens them. */
export const temIssues: typeof catalogue = defineIssues(catalogue);
