import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "interval-bound-not-a-number": {
    severity: "error",
    message: "a bound of an interval must be a number, not {received}",
    expected: "a number, or an infinity where there is no bound",
  },
  "interval-bounds-reversed": {
    severity: "error",
    message: "the upper bound {to} is below the lower bound {from}",
    expected: "an upper bound that is not below {from}",
  },
  "interval-empty": {
    severity: "error",
    message: "{received} holds no number at all",
    expected: "a lower bound below the upper one, or two equal finite bounds that both belong",
  },
  "interval-infinity-closed": {
    severity: "error",
    message: "an end without a bound cannot be closed",
    expected: "false where the bound is infinite",
  },
} as const;

/** What can be wrong with the bounds of an interval, as user data give them. */
export const intervalsIssues: typeof catalogue = defineIssues(catalogue);
