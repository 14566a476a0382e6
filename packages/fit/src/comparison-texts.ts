/** Why one pack stands before another: code and wording, with facts as in `reasonTexts`. */
export const comparisonTexts = {
  "likelier-fit": "{chart} is likelier to fit ({chartProbability}) than {other} ({otherProbability}).",
  "harness-length-judged":
    "{chart} was judged by a length of the back and {other} was not, so that its harness may be too long or too short.",
  "judged-by-more":
    "{chart} and {other} fit about equally well; {chart} was judged by {count} of the lengths that were read, {other} by {otherCount}.",
  "cut-matches": "{chart} and {other} fit about equally well; {chart} is cut for this body.",
  "other-cut": "{chart} and {other} fit about equally well; {other} is cut for other bodies.",
  "adjustable-for-first-pack":
    "{chart} and {other} fit about equally well; the harness of {chart} can be adjusted, which forgives more in a first pack.",
  "smaller-misfit": "{chart} and {other} are about equally likely to fit; {chart} is off by less on average.",
  "equal-fit": "{chart} and {other} fit about equally well.",
} as const;

/** A stable code for why one pack stands before another. */
export type ComparisonCode = keyof typeof comparisonTexts;
