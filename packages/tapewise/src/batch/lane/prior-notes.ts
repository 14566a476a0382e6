import { speakDimension } from "@tapewise/charts";
import { fitIssues } from "@tapewise/fit";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { createIssue, type Issue } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { personCuts } from "../../person/choices.ts";
import { choosePrior } from "../../person/choose-prior.ts";
import type { QuickEstimates } from "./quick-estimate.ts";
import { MOST_READINGS, type ScannedPerson } from "./scanned-person.ts";

/** What there is to say of a stature that no prior is taken from. */
export function statureIssues(person: ScannedPerson): readonly Issue[] {
  const cut = personCuts[person.cut - 1];
  const line = {
    ...(cut === undefined ? {} : { cut }),
    stature: textOf(person, person.statureFrom, person.statureTo),
    readings: {},
  };
  return choosePrior(line, millimetres(person.statureMm), "automatic").issues;
}

/** The questions about estimates that are unlikely beside a prior, in the order of its dimensions. */
export function unlikelyIssues(
  person: ScannedPerson,
  prior: Prior,
  estimates: QuickEstimates,
  unlikely: number,
): readonly Issue[] {
  return prior.dimensions.flatMap((dimension, i) => {
    const place = dimensionIds.indexOf(dimension);
    return (unlikely & (1 << place)) === 0
      ? []
      : [
          questionOne(
            person,
            dimension,
            place,
            estimates.mean[place] ?? 0,
            prior.meanMm[i] ?? 0,
            prior.label,
          ),
        ];
  });
}

/** In the words of `recommend`. */
function questionOne(
  person: ScannedPerson,
  dimension: DimensionId,
  place: number,
  meanMm: number,
  usualMm: number,
  label: string,
): Issue {
  const first = place * MOST_READINGS;
  const texts = Array.from({ length: person.counts[place] ?? 0 }, (_, k) =>
    textOf(person, person.textFrom[first + k] ?? 0, person.textTo[first + k] ?? 0),
  );
  const differenceMm = meanMm - usualMm;
  return createIssue(fitIssues, "estimate-unlikely", {
    path: ["readings", dimension],
    received: texts.join(", "),
    facts: {
      dimension: speakDimension(dimension),
      label,
      readingMm: Math.round(meanMm),
      usualMm: Math.round(usualMm),
      differenceMm: Math.round(Math.abs(differenceMm)),
      side: differenceMm < 0 ? "below" : "above",
    },
  });
}

/** Plain letters, as all that is scanned. */
function textOf({ bytes }: ScannedPerson, from: number, to: number): string {
  return String.fromCharCode(...bytes.subarray(from, to));
}
