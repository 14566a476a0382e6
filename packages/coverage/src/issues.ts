import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "coverage-chart-without-sizes": {
    severity: "error",
    message: "“{chart}” has no size",
    expected: "a chart with at least one size",
  },
  "coverage-nothing-judged": {
    severity: "error",
    message: "“{chart}” goes by {charted}, of which the figures of {people} say nothing",
    expected: "a chart that states at least one of {known}",
  },
  "coverage-dimension-left-out": {
    severity: "warning",
    message:
      "the figures of {people} say nothing of {dimension}, so “{chart}” was held against people without it",
    expected: "a population with {dimension}; with it the chart serves as many or fewer",
  },
  "coverage-girth-taken-as": {
    severity: "warning",
    message: "“{chart}” says “hip” and not which one; it was taken as {dimension}",
    expected: "a chart that says which hip girth it means",
  },
  "coverage-size-not-judged": {
    severity: "warning",
    message: "size {received} of “{chart}” does not state {dimension} and was counted as serving nobody",
    expected: "a range of {dimension} for every size",
  },
  "coverage-charts-differ": {
    severity: "error",
    message: "“{chart}” goes by {dimension} and “{other}” by {otherDimension}",
    expected: "charts that go by the same dimension, or an order for each chart by itself",
  },
} as const;

/** What can be wrong with charts that are held against a population. */
export const coverageIssues: typeof catalogue = defineIssues(catalogue);
