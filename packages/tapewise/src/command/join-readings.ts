const BARE_NUMBER = /^\d+(?:[.,]\d+)?$/;
const BARE_UNIT = /^(?:mm|cm|m|in|inch|inches|["″”])$/i;

/**
 * The readings among the words of a command line. `43.2 cm 44 cm` without quotation marks comes as four
 * words; a number and the unit right after it are one reading. Anything else is left as it came.
 */
export function joinReadings(words: readonly string[]): string[] {
  const readings: string[] = [];
  for (const word of words) {
    const last = readings.at(-1);
    if (last !== undefined && BARE_UNIT.test(word) && BARE_NUMBER.test(last)) {
      readings[readings.length - 1] = `${last} ${word}`;
    } else readings.push(word);
  }
  return readings;
}
