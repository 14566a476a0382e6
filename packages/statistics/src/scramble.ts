/** Four words of 32 bits: the key of a stream of random numbers. */
export type Key = readonly [number, number, number, number];

/** The quarter round of ChaCha (RFC 8439, section 2.1): an invertible mixing of four words. */
export function quarterRound([a, b, c, d]: Key): Key {
  a = (a + b) | 0;
  d = rotate(d ^ a, 16);
  c = (c + d) | 0;
  b = rotate(b ^ c, 12);
  a = (a + b) | 0;
  d = rotate(d ^ a, 8);
  c = (c + d) | 0;
  b = rotate(b ^ c, 7);
  return [a, b, c, d];
}

/**
 * A new key from a key and some words: each is added and mixed in by four quarter rounds that take turns
 * at the four places, so that keys whose words differ in one bit have nothing in common.
 */
export function scramble(key: Key, words: Iterable<number>): Key {
  let state = key;
  for (const word of words) {
    state = [state[0] ^ word, state[1], state[2], state[3]];
    for (let round = 0; round < 4; round += 1) {
      const [a, b, c, d] = quarterRound(state);
      state = [b, c, d, a];
    }
  }
  return state;
}

function rotate(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}
