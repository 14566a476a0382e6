import { createRandom } from "@tapewise/statistics";
import type { BoxProbability } from "../joint/joint-model.ts";
import type { Bounds } from "./bounds.ts";
import { createIntegrand } from "./integrand.ts";
import { orderBounds } from "./order-bounds.ts";

const SHIFTS = 10;
/** Any constant: it only says where the ten copies of the point set lie. */
const SEED = 0;
const FIRST_POINTS = 250;
const MOST_POINTS = 4000;
const TOLERANCE = 1e-5;

/** P of a box of seven or more variables, averaged over shifted point sets; see `normalBoxProbability`. */
export function latticeBox(bounds: Bounds): BoxProbability {
  const { dimensions, value } = createIntegrand(orderBounds(bounds));
  const steps = irrationalSteps(dimensions);
  const random = createRandom(SEED);
  const shifts = Array.from({ length: SHIFTS }, () => steps.map(() => random.uniform()));
  const sums = shifts.map(() => 0);
  const point = new Float64Array(dimensions);
  let done = 0;
  for (let goal = FIRST_POINTS; ; goal *= 2) {
    for (let s = 0; s < SHIFTS; s += 1) {
      const shift = shifts[s] ?? [];
      let sum = sums[s] ?? 0;
      for (let i = done + 1; i <= goal; i += 1) {
        for (let k = 0; k < dimensions; k += 1) {
          const place = i * (steps[k] ?? 0) + (shift[k] ?? 0);
          // Folding makes the integrand periodic, which is what the point set is good at.
          point[k] = Math.abs(2 * (place - Math.floor(place)) - 1);
        }
        sum += value(point);
      }
      sums[s] = sum;
    }
    done = goal;
    const answer = summarise(sums.map((sum) => sum / done));
    if (answer.error <= TOLERANCE || done >= MOST_POINTS) return answer;
  }
}

function summarise(means: readonly number[]): BoxProbability {
  const centre = means.reduce((sum, mean) => sum + mean, 0) / means.length;
  const squares = means.reduce((sum, mean) => sum + (mean - centre) ** 2, 0);
  const standardError = Math.sqrt(squares / (means.length * (means.length - 1)));
  return { probability: Math.min(Math.max(centre, 0), 1), error: Math.max(3 * standardError, 1e-15) };
}

/** Fractional parts of the roots of the first primes. */
function irrationalSteps(count: number): number[] {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate += 1) {
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  }
  return primes.map((prime) => Math.sqrt(prime) % 1);
}
