/**
 * Why a size was picked: code and wording. `{name}` stands for a fact; facts whose name ends in `Mm`
 * are written as lengths, in `Probability` as percentages, in `imension` as the name of a dimension.
 */
export const reasonTexts = {
  "most-probable": "{size} has the best chance to fit: {fitProbability}.",
  "equal-chance": "{size} and {other} have the same chance to fit: {fitProbability}.",
  "nearest-size": "No size is likely to fit; {size} is the nearest, off by {misfitMm} on average.",
  "room-on-both-sides":
    "{size} and {other} both take this {mainDimension}; {size} leaves {roomMm} to its nearer end, {other} only {otherRoomMm}.",
  "hip-belt-decides":
    "{size} and {other} both take this {mainDimension}; the {dimension} settles it, for it fits {size} with {sizeProbability} and {other} with {otherProbability}.",
  "build-takes-longer":
    "{size} and {other} both fit, with {sizeProbability} and {otherProbability}. With {build} the longer harness is usually the better one.",
  "harness-adjusts":
    "{size} and {other} both fit, with {sizeProbability} and {otherProbability}. The harness of {size} can be adjusted, which leaves room for a reading that is a little off.",
  "between-two-sizes":
    "The {dimension} lies between {size} and {other}: {size} is off by {misfitMm} on average, {other} by {otherMisfitMm}.",
  "beyond-the-chart":
    "The {dimension} lies {side} what the chart covers, by {byMm} on average and with a probability of {outsideProbability}.",
  "dimensions-disagree":
    "The {dimension} asks for {size}, the {otherDimension} for {other}, and no size takes both.",
  "no-size-likely":
    "No size stands out; the weakest point of {size} is the {dimension}, which it takes with {dimensionProbability}.",
  "belt-unlikely": "No hip belt of this pack is likely to fit; {belt} comes nearest, with {beltProbability}.",
  "capacity-differs": "{other} carries {otherLitres} L, {size} {sizeLitres} L. Fit goes before capacity.",
  "nominal-length-inferred":
    "The chart gives a single length for {size}; its range was inferred from the neighbouring sizes and is less sure than a printed one.",
  "dimension-not-stated":
    "For {size} the chart says nothing of the {dimension}; it was taken to suit everybody there.",
  "girth-not-stated": "The chart says “hip” and not which girth; it was judged by the {dimension}.",
  "other-girth-picks":
    "By the {otherDimension} it would be {other} and not {size}: ask the maker which girth “hip” means.",
  "other-girth-unlikely":
    "By the {otherDimension} {size} would fit with {otherProbability}: ask the maker which girth “hip” means.",
  "cut-differs":
    "This pack is cut for {cut} and not for {own}: the harness may sit badly even where the lengths fit.",
  "dimension-not-charted": "The chart says nothing of the {dimension}, so that was not judged.",
  "dimension-not-read": "The chart also states the {dimension}, which was not read.",
  "dimension-from-prior": "The {dimension} was not read; what is known of {label} stood in for it.",
  "prior-used": "The readings were weighed with what is known beforehand of {label}.",
  "double-size": "{size} is one pack that serves {covers}.",
} as const;

/** A stable code for a reason of a choice. */
export type ReasonCode = keyof typeof reasonTexts;
