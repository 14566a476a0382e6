/**
 * Why a size was picked: code and wording. `{name}` stands for a fact; facts whose name ends in `Mm`
 * are written as lengths, and facts whose name ends in `Probability` as percentages.
 */
export const reasonTexts = {
  "most-probable": "{size} has the best chance to fit: {fitProbability}.",
  "room-on-both-sides":
    "{size} and {other} both take this {dimension}; {size} leaves {roomMm} to its nearer end, {other} only {otherRoomMm}.",
  "hip-belt-decides":
    "The torso length alone does not settle it between {size} and {other}; the {dimension} does: it fits {size} with {sizeProbability}, {other} with {otherProbability}.",
  "build-takes-longer":
    "{size} and {other} both fit. With {build} the longer harness is usually the better one, and it costs {lossProbability} of fit probability.",
  "harness-adjusts":
    "{size} and {other} both fit. The harness of {size} can be moved to the back, which leaves room for a reading that is a little off.",
  "between-two-sizes":
    "The body lies between {size} and {other}; {size} is the nearer one, short by {misfitMm} on average.",
  "beyond-the-chart":
    "The {dimension} lies {side} what the chart covers, by {byMm} on average, with {outsideProbability}; {size} is the nearest size.",
  "dimensions-disagree":
    "The {dimension} asks for {other}, the {mainDimension} for {size}. The {mainDimension} carries the load, so it goes first.",
  "capacity-differs": "{other} carries {otherLitres} L, {size} {sizeLitres} L. Fit goes before capacity.",
  "nominal-length-inferred":
    "The chart gives a single length for {size}; its range was inferred from the neighbouring sizes and is less sure than a printed one.",
  "girth-not-stated": "The chart says “hip” and not which girth; it was judged by the {dimension}.",
  "dimension-not-read": "The chart also states the {dimension}, which was not read.",
  "dimension-from-prior":
    "The {dimension} was not read; what is known of people like this one stood in for it.",
  "prior-used": "The readings were weighed with what is known beforehand of {label}.",
  "double-size": "{size} is one pack that serves {covers}.",
} as const;

/** A stable code for a reason of a choice. */
export type ReasonCode = keyof typeof reasonTexts;

/** What to do next: code and wording, with facts as in {@link reasonTexts}. */
export const nextStepTexts = {
  "measure-again":
    "Take {count} more of the {dimension}: another look has a {changeProbability} chance to change the pick and raises the chance of the right size by about {gainProbability}.",
  "measure-with-helper":
    "Let a helper read the {dimension} {count} times: that has a {changeProbability} chance to change the pick and raises the chance of the right size by about {gainProbability}. More readings on yourself would repeat the same slip.",
  "measure-dimension": "Read the {dimension} as well: the chart sizes by it.",
  "check-reading": "Look at the {dimension} again before you trust this: {question}",
  "swap-hip-belt":
    "The hip belt of this pack can be swapped: take the harness in {size} and ask for a belt that suits the {dimension}.",
  "swap-harness": "The harness of this pack can be swapped: ask for the next {side} one.",
  "take-hip-belt": "Take the hip belt in {size}.",
  "try-both": "If you can, try {size} and {other} on with a load and keep the better one.",
  "other-chart": "Look at another pack: no size of this one is made for this {dimension}.",
  "check-on-body":
    "When it arrives, load it and look: the hip belt sits over the top of the hip bones, the harness follows the shoulders without a gap, and nothing pinches.",
  "see-fitter":
    "Pain, numbness, an injury, a pregnancy or a growing child: let a professional fitter or a clinician look before any load is carried.",
} as const;

/** A stable code for a next step. */
export type NextStepCode = keyof typeof nextStepTexts;
