import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "chart-gap": {
    severity: "warning",
    message: "{size} and {other} leave a gap of {widthMm} mm in {what}, from {fromMm} to {toMm} mm",
    expected: "neighbouring sizes that meet or overlap",
  },
  "chart-gap-of-writing": {
    severity: "warning",
    message:
      "read to the letter, {size} and {other} leave {widthMm} mm of {what} out, from {fromMm} to {toMm} mm: one step of the figures",
    expected: "one figure as the end of the one size and the beginning of the other",
  },
  "chart-overlap": {
    severity: "warning",
    message: "{size} and {other} overlap by {widthMm} mm in {what}, from {fromMm} to {toMm} mm",
    expected: "an overlap that is meant",
  },
  "chart-overlap-wide": {
    severity: "warning",
    message:
      "{size} and {other} overlap by {widthMm} mm in {what}, from {fromMm} to {toMm} mm; 20 to 30 mm is common practice",
    expected: "an overlap of about {usualMm} mm or less, unless more is meant",
  },
  "chart-size-inside": {
    severity: "warning",
    message: "{size} lies wholly inside {other} in {what}: by {what} alone nobody fits {size} only",
    expected: "sizes that each fit somebody whom the others do not",
  },
  "chart-ranges-equal": {
    severity: "warning",
    message: "{size} and {other} state the same range of {what}",
    expected: "ranges that tell the sizes apart, or another dimension that does",
  },
  "chart-sizes-out-of-order": {
    severity: "warning",
    message: "by its name {size} is smaller than {other}, but its {what} is larger",
    expected: "ranges that grow with the names of the sizes",
  },
  "chart-length-suspicious": {
    severity: "warning",
    message: "{size}: {lengths} is no {what} of a person; {slip}, it would be {wouldBe}",
    expected: "{what} between {leastMm} and {mostMm} mm",
  },
  "chart-length-implausible": {
    severity: "warning",
    message: "{size}: {lengths} is no {what} of a person",
    expected: "{what} between {leastMm} and {mostMm} mm",
  },
  "chart-range-narrow": {
    severity: "warning",
    message: "{size} spans only {widthMm} mm of {what}, less than a tape reading can tell apart",
    expected: "a range of at least {limitMm} mm",
  },
  "chart-range-wide": {
    severity: "warning",
    message: "{size} spans {widthMm} mm of {what}: most people lie within it",
    expected: "a range of at most {limitMm} mm, unless the harness really adjusts that far",
  },
  "chart-interval-inferred": {
    severity: "warning",
    message:
      "{size} states one {what}, {nominalMm} mm; its range, {lengths}, is inferred from the other sizes",
    expected: "a stated range",
  },
  "chart-girth-unstated": {
    severity: "warning",
    message: "the chart says hip and not which girth: around the iliac crests, or the widest one",
    expected: "hip-belt-girth (around the crests) or hip-girth (the widest)",
  },
  "chart-end-open-inside": {
    severity: "warning",
    message: "{size} has no {end} bound in {what}, though {other} lies beyond it",
    expected: "open ends at the smallest and the largest size only",
  },
  "chart-size-without-dimension": {
    severity: "warning",
    message: "{size} states no body dimension, so it can never be chosen",
    expected: "at least one range or length",
  },
  "chart-capacity-falls": {
    severity: "warning",
    message: "{other} is larger than {size} in {what} but holds less: {otherLitres} L after {sizeLitres} L",
    expected: "a capacity that grows with the size",
  },
} as const;

/** What the audit finds in a chart that could be read. */
export const auditIssues: typeof catalogue = defineIssues(catalogue);
