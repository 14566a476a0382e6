import type { JointModel } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { type Boxes, fitsOf, type JudgedLength } from "./fitting.ts";
import type { ExpectedReturns, ReturnShares } from "./returns.ts";

/** People who are drawn, and how they choose. */
export interface Drawing {
  readonly population: JointModel;
  readonly judged: readonly JudgedLength[];
  readonly boxes: Boxes;
  /** Place of the size that is given for estimates, by the printed chart. */
  readonly pickAt: (estimatesMm: readonly number[]) => number;
  /** How far off each judged dimension is, and how uncertain that is. */
  readonly offsets: readonly { readonly mm: number; readonly uncertaintyMm: number }[];
  readonly people: number;
  readonly seed: number;
}

/**
 * Returns by drawing people: true lengths, errors of measurement and true offsets at random; the same people with the
 * same errors choose by both charts, so that what is saved is known better than either share.
 */
export function drawReturns({
  population,
  judged,
  boxes,
  pickAt,
  offsets,
  people,
  seed,
}: Drawing): Pick<ExpectedReturns, "printed" | "relabelled" | "standardError"> {
  const random = createRandom(seed);
  const variables = judged.map(({ dimension }) => population.variables.indexOf(dimension));
  let [unserved, byPrinted, byRelabelled, either] = [0, 0, 0, 0];
  for (let k = 0; k < people; k += 1) {
    const person = population.sample(random);
    const lengths = variables.map((place) => person[place] ?? 0);
    const estimates = judged.map(
      ({ uncertaintyMm }, n) => (lengths[n] ?? 0) + uncertaintyMm * random.normal(),
    );
    const off = offsets.map(({ mm, uncertaintyMm }) => mm + uncertaintyMm * random.normal());
    const fits = fitsOf(
      boxes,
      lengths.map((length, n) => length - (off[n] ?? 0)),
    );
    if (!fits.includes(true)) {
      unserved += 1;
      continue;
    }
    const isWrong = fits[pickAt(estimates)] !== true;
    const isWrongStill = fits[pickAt(estimates.map((mm, n) => mm - (offsets[n]?.mm ?? 0)))] !== true;
    if (isWrong) byPrinted += 1;
    if (isWrongStill) byRelabelled += 1;
    if (isWrong !== isWrongStill) either += 1;
  }
  const [sentBack, exchanged, still] = [unserved / people, byPrinted / people, byRelabelled / people];
  // Each person adds 1, 0 or -1 to what is saved.
  const varianceOfSaved = either / people - (exchanged - still) ** 2;
  return {
    printed: sharesOf(exchanged, sentBack),
    relabelled: sharesOf(still, sentBack),
    standardError: {
      printed: Math.sqrt((exchanged * (1 - exchanged)) / people),
      relabelled: Math.sqrt((still * (1 - still)) / people),
      saved: Math.sqrt(Math.max(0, varianceOfSaved) / people),
    },
  };
}

function sharesOf(exchanged: number, sentBack: number): ReturnShares {
  return { kept: Math.max(0, 1 - exchanged - sentBack), exchanged, sentBack };
}
