import { InvalidArgumentError } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { requireCount, requirePositive, requireShare } from "../require-number.ts";
import type { InputCorrelation } from "./correlations.ts";
import type { InputDistribution } from "./input-distribution.ts";
import type { MeasurementModel } from "./measurement-model.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";
import { sampleInputs } from "./sample-inputs.ts";
import { type SimulatedOutput, summariseOutput } from "./summarise-output.ts";

/** An input of a simulation. */
export interface DistributedInput {
  /** A name of its own among the inputs. */
  readonly name: string;
  readonly distribution: InputDistribution;
}

/** A measurement whose distribution is asked for. */
export interface SimulationProblem {
  readonly inputs: readonly DistributedInput[];
  readonly model: MeasurementModel;
  /** Between inputs with normal distributions; what is left out is uncorrelated. */
  readonly correlations?: readonly InputCorrelation[];
  /** Seed of the random numbers: any safe integer. */
  readonly seed: number;
  /** Probability of the coverage intervals; 0.95 where it is left out. */
  readonly probability?: number;
  /** A fixed number of trials, 100 or more. Without it trials go on until the results are stable. */
  readonly trials?: number;
  /** Wanted numerical tolerance in the unit of the result; half a unit of the second digit of u where left out. */
  readonly tolerance?: number;
  /** Where to stop when the results will not settle; 2 million where it is left out. */
  readonly mostTrials?: number;
}

/** What a simulation found. */
export interface Simulation extends SimulatedOutput {
  readonly probability: number;
  readonly trials: number;
  /** The numerical tolerance that the results were to reach. */
  readonly tolerance: number;
  /** Twice the standard deviation of value, uncertainty and ends with equal tails over the batches, the largest. */
  readonly reachedTolerance: number;
  /** Whether they have reached it. */
  readonly isStable: boolean;
}

const MOST_TRIALS = 2_000_000;
const LEAST_TRIALS = 100;

/**
 * Propagates distributions by Monte Carlo (JCGM 101:2008): mean, standard uncertainty and coverage intervals
 * of the result, one with equal tails and the shortest one.
 *
 * Without a number of trials they are taken in batches (7.9) of 10 000, more for a probability above 0.99,
 * until twice the standard deviation of the mean over the batches is within the tolerance for value,
 * uncertainty and both ends of the interval with equal tails; where they keep wandering, `isStable` is false. The
 * ends of the shortest interval wander more, by their nature: many intervals are nearly as short. The same
 * problem with the same seed gives the same result.
 *
 * @throws {@link InvalidArgumentError} when there is no input, two have the same name, a figure is not
 * finite or out of range, correlations cannot hold together or join inputs that are not normal, or the model
 * gives no number.
 *
 * @example
 * ```ts
 * import { propagateDistributions } from "@tapewise/measurement";
 * const sum = propagateDistributions({
 *   inputs: [
 *     { name: "one", distribution: { shape: "rectangular", lower: -1, upper: 1 } },
 *     { name: "other", distribution: { shape: "rectangular", lower: -1, upper: 1 } },
 *   ],
 *   model: (values) => Number(values[0]) + Number(values[1]),
 *   seed: 7,
 * });
 * sum.uncertainty.toFixed(1); // => "0.8"
 * sum.isStable; // => true
 * ```
 */
export function propagateDistributions(problem: SimulationProblem): Simulation {
  const { probability = 0.95, trials, mostTrials = MOST_TRIALS } = problem;
  requireShare("probability", probability);
  if (trials !== undefined) requireCount("trials", trials, LEAST_TRIALS);
  if (problem.tolerance !== undefined) requirePositive("tolerance", problem.tolerance);
  const draw = sampleInputs(problem.inputs, problem.correlations ?? [], createRandom(problem.seed));
  const batchSize = Math.max(10_000, Math.ceil(100 / (1 - probability)));
  const most = trials ?? mostTrials;
  requireCount("mostTrials", mostTrials, trials === undefined ? 2 * batchSize : 1);

  const values = new Growing();
  const batches: SimulatedOutput[] = [];
  const toleranceFor = (uncertainty: number): number =>
    problem.tolerance ?? (uncertainty > 0 ? numericalTolerance(uncertainty, 2) : 0);
  for (;;) {
    const size = Math.min(batchSize, most - values.length);
    const batch = Float64Array.from({ length: size }, () => evaluate(problem.model, draw()));
    values.add(batch);
    if (size >= LEAST_TRIALS) batches.push(summariseOutput(batch, probability));
    const isOver = values.length + (trials === undefined ? batchSize : 1) > most;
    if (!isOver && (trials !== undefined || batches.length < 2)) continue;
    const reachedTolerance = wanderOf(batches);
    const whole = isOver ? undefined : values.uncertainty();
    if (whole !== undefined && !(reachedTolerance <= toleranceFor(whole))) continue;
    const output = summariseOutput(values.all(), probability);
    const tolerance = toleranceFor(output.uncertainty);
    return {
      ...output,
      probability,
      trials: values.length,
      tolerance,
      reachedTolerance,
      isStable: reachedTolerance <= tolerance,
    };
  }
}

function evaluate(model: MeasurementModel, inputs: ArrayLike<number>): number {
  const value = model(inputs);
  if (Number.isFinite(value)) return value;
  const expected = `a function that gives finite numbers for every draw (${Array.from(inputs).join(", ")})`;
  throw new InvalidArgumentError("model", value, expected);
}

/** Twice the standard deviation of the mean over batches, for whichever result wanders most. */
function wanderOf(batches: readonly SimulatedOutput[]): number {
  const h = batches.length;
  if (h < 2) return Number.POSITIVE_INFINITY;
  const results = batches.map(({ value, uncertainty, symmetric }) => [
    value,
    uncertainty,
    symmetric.lower,
    symmetric.upper,
  ]);
  return Math.max(
    ...(results[0] as number[]).map((_, column) => {
      const mean = results.reduce((sum, row) => sum + (row[column] as number), 0) / h;
      const squares = results.reduce((sum, row) => sum + ((row[column] as number) - mean) ** 2, 0);
      return 2 * Math.sqrt(squares / (h * (h - 1)));
    }),
  );
}

/** Values of many batches, without knowing beforehand how many. */
class Growing {
  length = 0;
  private readonly batches: Float64Array[] = [];

  add(batch: Float64Array): void {
    this.batches.push(batch);
    this.length += batch.length;
  }

  all(): Float64Array {
    const all = new Float64Array(this.length);
    let at = 0;
    for (const batch of this.batches) {
      all.set(batch, at);
      at += batch.length;
    }
    return all;
  }

  uncertainty(): number {
    let sum = 0;
    for (const batch of this.batches) for (const value of batch) sum += value;
    const mean = sum / this.length;
    let squares = 0;
    for (const batch of this.batches) for (const value of batch) squares += (value - mean) ** 2;
    return Math.sqrt(squares / (this.length - 1));
  }
}
