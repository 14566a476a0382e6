import { InvalidArgumentError } from "@tapewise/outcome";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { generatorOf } from "./generator.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { type Key, scramble } from "./scramble.ts";

/** A stream of random numbers that is the same each time it is made from the same seed. */
export interface Random {
  /** The next number of the stream, uniform between 0 and 1 and never either: a multiple of 2⁻⁵³. */
  uniform(): number;
  /** The next standard normal number: {@link normalQuantile} of the next uniform one. */
  normal(): number;
  /**
   * The next whole number from `low` to `high`, both included, all equally likely.
   *
   * @throws {@link InvalidArgumentError} when a bound is not a safe integer, `high` is below `low`, or they
   * are more than 2⁵³ − 1 apart.
   */
  integer(low: number, high: number): number;
  /**
   * A stream of its own for a person, a trial, a worker: it depends on the seed and the labels on the way
   * to it, and not on how many numbers were drawn before. 1 and "1" are different labels.
   *
   * @throws {@link InvalidArgumentError} when a numeric label is not a safe integer.
   */
  fork(label: string | number): Random;
}

/** The first words of "expand 32-byte k", the constants of ChaCha (RFC 8439): a key that nobody chose. */
const ROOT: Key = [0x61707865, 0x3320646e, 0x79622d32, 0x6b206574];
const NUMBER = 1;
const TEXT = 2;

/**
 * A stream of random numbers from a seed, any safe integer. The same seed gives the same stream in every run,
 * and what one seed gives belongs to the stable behaviour of the package. Not for secrets.
 *
 * The generator is xoroshiro128+ of D. Blackman & S. Vigna (2018); seed and labels are spread over its state by
 * the quarter round of ChaCha (RFC 8439).
 *
 * @throws {@link InvalidArgumentError} when `seed` is not a safe integer.
 *
 * @example
 * ```ts
 * import { createRandom } from "@tapewise/statistics";
 * const random = createRandom(7);
 * random.uniform() === createRandom(7).uniform(); // => true
 * createRandom(7).fork("ana").normal() === random.fork("ana").normal(); // => true
 * [1, 2, 3].includes(random.integer(1, 3)); // => true
 * ```
 */
export function createRandom(seed: number): Random {
  return fromKey(scramble(ROOT, wordsOf("seed", seed)));
}

function fromKey(key: Key): Random {
  const generator = generatorOf(scramble(key, [0]));
  const uniform = (): number => {
    for (;;) {
      // Upper bits: the lowest ones of xoroshiro128+ are its weakest.
      const whole = (generator.next() >>> 5) * 0x4000000 + (generator.next() >>> 6);
      if (whole > 0) return whole * 2 ** -53;
    }
  };
  return {
    uniform,
    normal: () => normalQuantile(uniform()),
    integer: (low, high) => {
      requireRange(low, high);
      return uniformInt(generator, low, high);
    },
    fork: (label) => fromKey(scramble(key, wordsOf("label", label))),
  };
}

/** A number or a text as words, so that no two of them give the same ones. */
function wordsOf(argument: string, label: string | number): number[] {
  if (typeof label === "string") {
    return [TEXT, label.length, ...Array.from({ length: label.length }, (_, i) => label.charCodeAt(i))];
  }
  if (!Number.isSafeInteger(label)) throw new InvalidArgumentError(argument, label, "a safe integer");
  return [NUMBER, label | 0, Math.floor(label / 2 ** 32) | 0];
}

function requireRange(low: number, high: number): void {
  if (!Number.isSafeInteger(low)) throw new InvalidArgumentError("low", low, "a safe integer");
  if (!(Number.isSafeInteger(high) && high >= low && high - low <= Number.MAX_SAFE_INTEGER)) {
    throw new InvalidArgumentError("high", high, `a safe integer from ${low} and at most 2^53 - 1 above it`);
  }
}
