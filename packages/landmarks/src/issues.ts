import { defineIssues } from "@tapewise/outcome";

const catalogue = {
  "dimension-name-ambiguous": {
    severity: "error",
    message: "“{received}” can mean more than one dimension: {candidates}",
    expected: "a name that says which one, such as “{first}”",
  },
  "dimension-name-unknown": {
    severity: "error",
    message: "“{received}” names no dimension that is known here",
    expected: "the name of a dimension, such as {suggestions}",
  },
  "torso-height-not-positive": {
    severity: "error",
    message: "a height of {received} mm is not above the floor",
    expected: "a height above the floor, in millimetres",
  },
  "torso-heights-reversed": {
    severity: "error",
    message: "C7 at {cervicaleHeightMm} mm is not above the iliac crest at {iliacCrestHeightMm} mm",
    expected: "a cervicale height above the iliac-crest height; perhaps the two were exchanged",
  },
  "torso-length-straight": {
    severity: "warning",
    message:
      "{torsoLengthMm} mm is the straight height from the iliac crest to C7; along the curve of the back it is a little longer, by about {curveSurplusMm} mm on average",
    expected: "a torso length read along the back, where one can be taken",
  },
} as const;

/** What can be wrong with the names of dimensions and with two heights, as user data give them. */
export const landmarksIssues: typeof catalogue = defineIssues(catalogue);
