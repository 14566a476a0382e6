import { InvalidArgumentError } from "@tapewise/outcome";
import type { JointModel, Variable } from "@tapewise/population";
import { createRandom, normalQuantile, sampleQuantile } from "@tapewise/statistics";
import { requireChance, requireCount } from "./require-argument.ts";
import { isMixture, resample } from "./resample.ts";
import type { Share } from "./share.ts";
import type { Band, SurveyOptions } from "./survey.ts";

/** Shares with their bands, in the order in which they were measured. */
export interface BandedShares {
  readonly shares: readonly Share[];
  readonly band?: Band;
}

/** Measures shares of people of a model, and how far off they may be because few people were surveyed. */
export function withBands(
  model: JointModel,
  variables: readonly Variable[],
  measure: (model: JointModel) => readonly number[],
  survey: SurveyOptions | undefined,
): BandedShares {
  const shares = measure(model);
  if (survey === undefined) return { shares: shares.map((share) => ({ share })) };
  const confidence = survey.confidence ?? 0.95;
  const replicates = survey.replicates ?? 400;
  requireChance("survey.confidence", confidence);
  requireCount("survey.replicates", replicates, 20);
  const people = peopleOf(model, survey.people, variables.length);
  const random = createRandom(survey.seed ?? 1);
  const drawn: (readonly number[])[] = [];
  for (let k = 0; k < replicates; k += 1) {
    const other = resample(model, variables, people, random.fork(k));
    if (other === undefined) break;
    drawn.push(measure(other));
  }
  const tail = (1 - confidence) / 2;
  if (drawn.length < replicates) {
    const effective = effectivePeople(model, people);
    const z = normalQuantile(1 - tail);
    return {
      shares: shares.map((share) => ({ share, ...wilson(share, effective, z) })),
      band: { confidence, people, method: "wilson" },
    };
  }
  return {
    shares: shares.map((share, place) => {
      const values = drawn.map((one) => one[place] ?? 0);
      // Beside a bound of 0 or 1 the middle of few replicates may miss the share itself.
      const low = Math.min(share, sampleQuantile(values, tail, 8));
      const high = Math.max(share, sampleQuantile(values, 1 - tail, 8));
      return { share, low, high };
    }),
    band: { confidence, people, method: "parametric-bootstrap" },
  };
}

/** How many people are behind each part of a model. */
function peopleOf(
  model: JointModel,
  people: number | readonly number[],
  variables: number,
): readonly number[] {
  const parts = isMixture(model) ? model.parts.length : 1;
  const list = typeof people === "number" ? [people] : people;
  if (list.length !== parts) {
    throw new InvalidArgumentError("survey.people", people, `a number of people for each of ${parts} parts`);
  }
  for (const [k, count] of list.entries()) requireCount(`survey.people[${k}]`, count, variables + 2);
  return list;
}

/** How many people drawn from all alike would tell as much. */
function effectivePeople(model: JointModel, people: readonly number[]): number {
  if (!isMixture(model)) return people[0] ?? 1;
  return 1 / model.parts.reduce((sum, { weight }, k) => sum + weight ** 2 / (people[k] ?? 1), 0);
}

/** E. B. Wilson (1927), J. Am. Stat. Assoc. 22, 209–212. */
function wilson(share: number, people: number, z: number): { readonly low: number; readonly high: number } {
  const weight = z ** 2 / people;
  const centre = (share + weight / 2) / (1 + weight);
  const half = (z / (1 + weight)) * Math.sqrt((share * (1 - share)) / people + weight / (4 * people));
  return {
    low: Math.max(0, Math.min(share, centre - half)),
    high: Math.min(1, Math.max(share, centre + half)),
  };
}
