import type { ScannedPerson } from "./scanned-person.ts";

const [QUOTE, COLON, SPACE] = [0x22, 0x3a, 0x20];

/** A word of plain letters as it stands in a line. */
export function wordOf(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}

/** The position of a name among those that may stand there, past its colon; -1 where it is none of them. */
export function scanName(person: ScannedPerson, names: readonly Uint8Array[]): number {
  const name = scanWord(person, names);
  if (name < 0 || person.bytes[person.at] !== COLON) return -1;
  person.at += 1;
  skipSpaces(person);
  return name;
}

/** The position of a text among those that may stand there; -1 where it is none of them. */
export function scanWord(person: ScannedPerson, words: readonly Uint8Array[]): number {
  const { bytes, at } = person;
  if (bytes[at] !== QUOTE) return -1;
  const first = bytes[at + 1];
  for (let k = 0; k < words.length; k += 1) {
    const word = words[k] as Uint8Array;
    // Most words differ in their first letter, and none has a quotation mark in it.
    if (word[0] !== first || bytes[at + 1 + word.length] !== QUOTE || !isAt(bytes, at + 1, word)) continue;
    person.at = at + word.length + 2;
    return k;
  }
  return -1;
}

/** Whether a word stands at some place. */
export function isAt(bytes: Uint8Array, at: number, word: Uint8Array): boolean {
  for (let k = 0; k < word.length; k += 1) if (bytes[at + k] !== word[k]) return false;
  return true;
}

/** Goes on to what is no space. */
export function skipSpaces(person: ScannedPerson): void {
  while (person.bytes[person.at] === SPACE) person.at += 1;
}
