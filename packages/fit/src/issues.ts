import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "chart-not-judged": {
    severity: "error",
    message: "nothing that was read is what {chart} sizes by ({charted})",
    expected: "readings of at least one of: {charted}",
  },
  "chart-without-sizes": {
    severity: "error",
    message: "{chart} has no size that could be picked",
    expected: "a chart with at least one size that states a dimension",
  },
  "no-charts": {
    severity: "error",
    message: "there is no chart to choose from",
    expected: "at least one chart",
  },
  "estimate-repeated": {
    severity: "error",
    message: "the {dimension} is estimated twice",
    expected: "one estimate for each dimension",
  },
  "estimate-unlikely": {
    severity: "warning",
    message: "{readingMm} mm for the {dimension} is {differenceMm} mm {side} what is usual for {label}",
    expected: "a reading near {usualMm} mm, or a second look at the bones and the unit",
  },
  "estimate-implausible": {
    severity: "warning",
    message:
      "{readingMm} mm for the {dimension} is {differenceMm} mm {side} what people have, children included",
    expected: "a reading from {fromMm} to {toMm} mm, or a second look at the unit",
  },
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

/** What keeps a choice from being made (errors), and doubts about what was read (warnings). */
export const fitIssues: typeof catalogue = defineIssues(catalogue);
