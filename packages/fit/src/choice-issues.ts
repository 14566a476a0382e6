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
} as const;

/** What keeps one person's choice from being made (errors), and doubts about what was read (warnings). */
export const choiceIssues: typeof catalogue = defineIssues(catalogue);
