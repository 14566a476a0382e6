import { outcome } from "tapewise";

const catalogue = {
  "sql-belief-missing": {
    severity: "error",
    message: "a mean or a standard deviation is missing, so that nothing was chosen for this person",
    expected: "a mean and a standard deviation of every dimension that the query asks for",
  },
  "sql-belief-invalid": {
    severity: "error",
    message: "a mean is not above 0, or a standard deviation is below 0, or one of them is no length at all",
    expected: "a mean above 0 and a standard deviation of 0 or more, in the unit that was named",
  },
  "sql-id-repeated": {
    severity: "error",
    message: "two people have the same id, so that they cannot be told apart",
    expected: "an id of their own for every person",
  },
} as const;

/** What each issue code of this package means. */
export const duckdbIssues: typeof catalogue = /* @__PURE__ */ outcome.defineIssues(catalogue);
