import { InvalidArgumentError } from "@tapewise/outcome";
import { plottingPositions, type QuantileType, sampleQuantile } from "@tapewise/statistics";
import { requireProbability, requireSample, requireWeights } from "../require-argument.ts";

/**
 * The value below which a share `p` of a sample lies, by one of the nine definitions of Hyndman & Fan (1996), with
 * weights where people count differently. In the unit of the values.
 *
 * Without weights it is `sampleQuantile` of `@tapewise/statistics`. With them, types 1 and 2 go by the weighted
 * distribution function, and 4 to 9 spread each person over the own share and take Kish's effective number for n
 * (A. Akinshin, 2023, Weighted quantile estimators, arXiv:2304.07265); equal weights give the same as none. Type
 * 3, the nearest even rank, has no meaning with weights.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, `p` is not from 0 to 1, `type`
 * is none (or 3 with weights), or the weights are not one number from 0 up for each value.
 *
 * @example
 * ```ts
 * import { samplePercentile } from "@tapewise/population";
 * samplePercentile([400, 410, 420, 430], 0.5, 7); // => 415
 * samplePercentile([400, 410, 420, 430], 0.5, 1, [1, 1, 1, 4]); // => 430
 * ```
 */
export function samplePercentile(
  values: readonly number[],
  p: number,
  type: QuantileType,
  weights?: readonly number[],
): number {
  requireSample("values", values, 1);
  requireProbability("p", p);
  if (weights === undefined) return sampleQuantile(values, p, type);
  requireWeights("weights", weights, values.length);
  if (!(Number.isInteger(type) && type >= 1 && type <= 9 && type !== 3)) {
    throw new InvalidArgumentError(
      "type",
      type,
      "1, 2, or a whole number from 4 to 9 where people have weights",
    );
  }
  const people = values
    .map((value, index) => ({ value, weight: weights[index] ?? 0 }))
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => a.value - b.value);
  return type < 3 ? atStep(people, p, type) : betweenSteps(people, p, type);
}

interface Weighted {
  readonly value: number;
  readonly weight: number;
}

function totalOf(people: readonly Weighted[]): number {
  return people.reduce((sum, { weight }) => sum + weight, 0);
}

/** Types 1 and 2: the least value that the share reaches; type 2 averages with the next at a step. */
function atStep(people: readonly Weighted[], p: number, type: 1 | 2 | number): number {
  const target = p * totalOf(people);
  const tolerance = 4 * Number.EPSILON * Math.max(target, Number.MIN_VALUE);
  let reached = 0;
  for (const [index, { value, weight }] of people.entries()) {
    reached += weight;
    if (reached < target - tolerance) continue;
    const next = people[index + 1]?.value ?? value;
    const isStep = target > 0 && Math.abs(reached - target) <= tolerance * people.length;
    return type === 2 && isStep ? (value + next) / 2 : value;
  }
  return people.at(-1)?.value ?? 0;
}

/** Types 4 to 9: the mean over a window of one effective person, wherever its definition puts it. */
function betweenSteps(people: readonly Weighted[], p: number, type: number): number {
  const total = totalOf(people);
  const effective = total ** 2 / people.reduce((sum, { weight }) => sum + weight ** 2, 0);
  const [a, b] = plottingPositions[type - 4] ?? [1, 1];
  const rank = Math.min(Math.max(a + p * (effective + 1 - a - b), 1), effective);
  const from = (rank - 1) / effective;
  const to = rank / effective;
  const covered = (share: number): number => Math.min(Math.max((share - from) / (to - from), 0), 1);
  let below = 0;
  let sum = 0;
  for (const { value, weight } of people) {
    const next = below + weight / total;
    sum += value * (covered(next) - covered(below));
    below = next;
  }
  return sum;
}
