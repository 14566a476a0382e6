import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "chart-text-too-long": {
    severity: "error",
    message: "{what} has {characters} characters: {received}",
    expected: "at most {limit} characters",
  },
  "chart-cell-unreadable": {
    severity: "error",
    message: "{received} cannot be read as a range, a length or an open end",
    expected: "38-43, 46, <104 or 48+, with a unit in the cell or in the header",
  },
  "chart-cell-half-range": {
    severity: "error",
    message: "{received} is half a range: it may be an open end or a figure left out",
    expected: "{length}+ or <{length} for an open end, or both ends",
  },
  "chart-range-reversed": {
    severity: "error",
    message: "the range {received} begins above its end",
    expected: "the smaller length first; the ends were not swapped",
  },
  "chart-cell-unit-differs": {
    severity: "warning",
    message:
      "{received} is written in {cellUnit} under a header that says {columnUnit}; the cell's own unit counts",
    expected: "the header's unit, or a header without a unit",
  },
  "chart-statements-disagree": {
    severity: "warning",
    message:
      "the two statements {received} differ by {differenceMm} mm at the {end}, more than rounding explains ({allowedMm} mm); the first one counts",
    expected: "the same length in both units, to within half a step of the coarser one",
  },
  "chart-statements-differ-in-kind": {
    severity: "warning",
    message: "the two statements {received} are not of one kind; the first one counts",
    expected: "two ranges, two open ends on one side, or two nominal lengths",
  },
} as const;

/** What keeps one cell from being read, and what two statements of one range disagree in. */
export const cellIssues: typeof catalogue = defineIssues(catalogue);
