import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "length-not-text": {
    severity: "error",
    message: "{received} is not text",
    expected: "a length as text, such as 43.2 cm",
  },
  "length-empty": {
    severity: "error",
    message: "there is no length here",
    expected: "a length such as 43.2 cm",
  },
  "length-too-long": {
    severity: "error",
    message: "{received} is too long for a length",
    expected: "at most {limit} characters",
  },
  "length-not-a-number": {
    severity: "error",
    message: "{received} has no number that can be read",
    expected: "a number and a unit, such as 43.2 cm",
  },
  "length-no-unit": {
    severity: "error",
    message: "{received} has no unit",
    expected: "{number} cm or {number} in",
  },
  "length-unit-unknown": {
    severity: "error",
    message: "{unit} is not a known unit of length",
    expected: "a unit such as {suggestion}",
  },
  "length-unit-wrong-kind": {
    severity: "error",
    message: "{unit} is a unit of {kind}, not of length",
    expected: "a length in {units}",
  },
  "length-unit-unread": {
    severity: "error",
    message: "{unit} is a unit of length that is not read here",
    expected: "a length in {units}",
  },
  "length-negative": {
    severity: "error",
    message: "{received} is below zero",
    expected: "a length above zero",
  },
  "length-zero": {
    severity: "error",
    message: "{received} is zero",
    expected: "a length above zero",
  },
  "length-fraction-impossible": {
    severity: "error",
    message: "{received} has an impossible fraction: {fraction}",
    expected: "a fraction of whole numbers, below one after a whole number, such as 18 3/8",
  },
  "length-ambiguous-separator": {
    severity: "error",
    message: "{received} can be read as {grouped} or as {decimal}",
    expected: "{grouped} or {decimal}",
  },
  "length-several-numbers": {
    severity: "error",
    message: "{received} has more than one number",
    expected: "one length, without spaces between thousands",
  },
  "length-parts-disagree": {
    severity: "error",
    message: "{received} has parts that do not add up to one length",
    expected: "whole {larger}, then less than {limit} {smaller}",
  },
  "length-extra-text": {
    severity: "error",
    message: "{received} has something beside the length: {extra}",
    expected: "one number with its unit and nothing else, such as 43.2 cm",
  },
} as const;

/** What each issue code of this package means. */
export const unitsIssues: typeof catalogue = defineIssues(catalogue);
