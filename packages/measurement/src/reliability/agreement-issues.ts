import { defineIssues } from "@tapewise/outcome";

const catalogue = {
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

/** What keeps two measurers from being compared. */
export const agreementIssues: typeof catalogue = defineIssues(catalogue);
