import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";
import type { JumpableRandomGenerator } from "pure-rand/types/JumpableRandomGenerator";
import type { Key } from "./scramble.ts";

/**
 * The generator xoroshiro128+ (D. Blackman & S. Vigna, 2018) that starts from a key: the upper and the lower
 * word of its first number, then of its second. It gives the lower 32 bits of each result.
 */
export function generatorOf(key: Key): JumpableRandomGenerator {
  return xoroshiro128plusFromState(key);
}
