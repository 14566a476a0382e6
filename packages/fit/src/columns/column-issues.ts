import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "columns-belts-apart": {
    severity: "error",
    message: "{received} has hip belts that are picked by themselves, which columns do not hold",
    expected: "a chart without belts sized apart, or one person at a time",
  },
  "columns-beliefs-joint": {
    severity: "error",
    message:
      "what is known beforehand binds two dimensions of {received} together, which columns do not hold",
    expected: "dimensions that are independent of each other, or one person at a time",
  },
  "columns-girth-unclear": {
    severity: "error",
    message: "{received} says “hip” where more than one girth may be meant, which columns do not hold",
    expected: "a chart that says which girth it means, or one person at a time",
  },
} as const;

/** What keeps a chart from being judged in columns. Apart, so that a choice for one person does not carry it. */
export const columnIssues: typeof catalogue = defineIssues(catalogue);
