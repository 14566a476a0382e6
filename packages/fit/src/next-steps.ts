/** What to do next: code and wording, with facts as in `reasonTexts`. */
export const nextStepTexts = {
  "measure-again":
    "Read the {dimension} {times} more: that has a {changeProbability} chance to change the pick, and raises the chance of the right size from {nowProbability} to about {thenProbability}.",
  "measure-with-helper":
    "Let a helper read the {dimension} {times}: that has a {changeProbability} chance to change the pick, and raises the chance of the right size from {nowProbability} to about {thenProbability}. More readings of your own would repeat the same slip.",
  "measure-dimension": "Read the {dimension} as well: the chart sizes by it.",
  "check-reading":
    "Look at the {dimension} again before you trust this: {readingMm} is {differenceMm} {side} what is usual for {label}.",
  "confirm-reading": "Read the {dimension} again before you buy: only {fitProbability} speaks for {size}.",
  "swap-hip-belt":
    "The hip belt of this pack can be swapped: take the harness in {size} and ask for a belt that suits this {dimension}.",
  "swap-harness": "The harness of this pack can be swapped: ask for the next {side} one.",
  "take-hip-belt": "Take the hip belt in {belt}.",
  "try-both": "If you can, try {size} and {other} on with a load and keep the better one.",
  "other-chart": "Look at another pack: no size of this one is made for this {dimension}.",
  "consider-other-chart":
    "Compare another pack: with {outsideProbability} the {dimension} lies {side} all that this one covers.",
  "check-on-body":
    "When it arrives, load it and look: the hip belt sits over the top of the hip bones, the harness follows the shoulders without a gap, and nothing pinches.",
  "see-fitter":
    "Pain, numbness, an injury, a pregnancy or a growing child: let a professional fitter or a clinician look before any load is carried.",
} as const;

/** A stable code for a next step. */
export type NextStepCode = keyof typeof nextStepTexts;
