import { buildFeatures } from "@tapewise/fit";
import { dimensionIds } from "@tapewise/landmarks";
import { scanLength } from "./scan-length.ts";
import { isAt, scanName, scanWord, skipSpaces, wordOf } from "./scan-word.ts";
import { MOST_READINGS, type ScannedPerson } from "./scanned-person.ts";

const [QUOTE, BACKSLASH, COMMA, SPACE] = [0x22, 0x5c, 0x2c, 0x20];
const [OPEN_OBJECT, CLOSE_OBJECT, OPEN_LIST, CLOSE_LIST] = [0x7b, 0x7d, 0x5b, 0x5d];
const [ZERO, NINE, TILDE, LETTER_F, LETTER_T] = [0x30, 0x39, 0x7e, 0x66, 0x74];

const DIMENSIONS: readonly Uint8Array[] = dimensionIds.map(wordOf);
const FEATURES: readonly Uint8Array[] = buildFeatures.map(wordOf);
const CUTS: readonly Uint8Array[] = ["women", "men"].map(wordOf);
const HANDS: readonly Uint8Array[] = ["self", "helper"].map(wordOf);
const TOOLS: readonly Uint8Array[] = ["tape", "cord-and-ruler"].map(wordOf);
const SWITCHES: readonly Uint8Array[] = ["false", "true"].map(wordOf);
const FIELDS: readonly Uint8Array[] = [
  "id",
  "cut",
  "stature",
  "measuredBy",
  "tool",
  "landmarksFoundAfresh",
  "build",
  "firstPack",
  "readings",
].map(wordOf);
const [ID, CUT, STATURE, BY, TOOL, AFRESH, BUILD, FIRST_PACK, READINGS] = FIELDS.keys();
/** Digits of an id that are surely written back as they came. */
const MOST_ID_DIGITS = 15;

/**
 * Reads a line of the batch contract straight from its bytes, if it is of the usual form: known fields, each once,
 * texts of plain letters, lengths as most people write them. Whether it is; any other line, a faulty one above all,
 * is for the reader that says what is wrong with it.
 */
export function scanPerson(person: ScannedPerson, bytes: Uint8Array, from: number, to: number): boolean {
  person.bytes = bytes;
  person.at = from;
  person.end = to;
  person.idFrom = -1;
  person.cut = 0;
  person.statureMm = 0;
  person.by = 0;
  person.tool = 0;
  person.afresh = 0;
  person.hasBuild = false;
  person.read = 0;
  if (bytes[person.at] !== OPEN_OBJECT) return false;
  person.at += 1;
  let seen = 0;
  for (;;) {
    const field = scanName(person, FIELDS);
    if (field < 0 || (seen & (1 << field)) !== 0 || !scanField(person, field)) return false;
    seen |= 1 << field;
    const byte = bytes[person.at];
    person.at += 1;
    if (byte === CLOSE_OBJECT) break;
    if (byte !== COMMA) return false;
    skipSpaces(person);
  }
  return person.at === to && person.read !== 0;
}

function scanField(person: ScannedPerson, field: number): boolean {
  switch (field) {
    case ID:
      return scanId(person);
    case CUT:
      person.cut = 1 + scanWord(person, CUTS);
      return person.cut > 0;
    case STATURE:
      person.statureFrom = person.at + 1;
      if (!scanLength(person)) return false;
      person.statureTo = person.at - 1;
      person.statureMm = person.lengthMm;
      return true;
    case BY:
      person.by = scanWord(person, HANDS);
      return person.by >= 0;
    case TOOL:
      person.tool = scanWord(person, TOOLS);
      return person.tool >= 0;
    case AFRESH:
      person.afresh = 1 + scanSwitch(person);
      return person.afresh > 0;
    case BUILD:
      return scanBuild(person);
    case FIRST_PACK:
      return scanSwitch(person) >= 0;
    case READINGS:
      return scanReadings(person);
    default:
      return false;
  }
}

function scanSwitch(person: ScannedPerson): number {
  const first = person.bytes[person.at];
  const which = first === LETTER_T ? 1 : first === LETTER_F ? 0 : -1;
  const word = SWITCHES[which];
  if (word === undefined || !isAt(person.bytes, person.at, word)) return -1;
  person.at += word.length;
  return which;
}

/** Plain letters between quotation marks, or a whole number. */
function scanId(person: ScannedPerson): boolean {
  const { bytes, end } = person;
  const from = person.at;
  let at = from;
  if (bytes[at] === QUOTE) {
    for (at += 1; at < end; at += 1) {
      const byte = bytes[at] as number;
      if (byte === QUOTE) break;
      if (byte === BACKSLASH || byte < SPACE || byte > TILDE) return false;
    }
    at += 1;
  } else {
    while (at < end && (bytes[at] as number) >= ZERO && (bytes[at] as number) <= NINE) at += 1;
    const digits = at - from;
    if (digits === 0 || digits > MOST_ID_DIGITS || (digits > 1 && bytes[from] === ZERO)) return false;
  }
  person.idFrom = from;
  person.idTo = at;
  person.at = at;
  return true;
}

function scanBuild(person: ScannedPerson): boolean {
  const { bytes } = person;
  if (bytes[person.at] !== OPEN_LIST) return false;
  person.at += 1;
  if (bytes[person.at] === CLOSE_LIST) {
    person.at += 1;
    return true;
  }
  person.hasBuild = true;
  for (;;) {
    if (scanWord(person, FEATURES) < 0) return false;
    const byte = bytes[person.at];
    person.at += 1;
    if (byte === CLOSE_LIST) return true;
    if (byte !== COMMA) return false;
    skipSpaces(person);
  }
}

function scanReadings(person: ScannedPerson): boolean {
  const { bytes } = person;
  if (bytes[person.at] !== OPEN_OBJECT) return false;
  person.at += 1;
  for (;;) {
    const dimension = scanName(person, DIMENSIONS);
    if (dimension < 0 || (person.read & (1 << dimension)) !== 0 || !scanList(person, dimension)) return false;
    person.read |= 1 << dimension;
    const byte = bytes[person.at];
    person.at += 1;
    if (byte === CLOSE_OBJECT) return true;
    if (byte !== COMMA) return false;
    skipSpaces(person);
  }
}

/** The readings of one dimension, which must be of one system of units. */
function scanList(person: ScannedPerson, dimension: number): boolean {
  const { bytes, lengths, steps } = person;
  if (bytes[person.at] !== OPEN_LIST) return false;
  person.at += 1;
  let count = 0;
  let system = 0;
  let step = Number.POSITIVE_INFINITY;
  for (;;) {
    const from = person.at;
    if (count === MOST_READINGS || !scanLength(person)) return false;
    if (count > 0 && person.system !== system) return false;
    system = person.system;
    step = Math.min(step, person.stepMm);
    const place = dimension * MOST_READINGS + count;
    lengths[place] = person.lengthMm;
    person.textFrom[place] = from + 1;
    person.textTo[place] = person.at - 1;
    count += 1;
    const byte = bytes[person.at];
    person.at += 1;
    if (byte === CLOSE_LIST) break;
    if (byte !== COMMA) return false;
    skipSpaces(person);
  }
  person.counts[dimension] = count;
  steps[dimension] = step;
  return true;
}
