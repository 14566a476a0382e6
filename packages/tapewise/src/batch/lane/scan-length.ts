import type { ScannedPerson } from "./scanned-person.ts";

const [ZERO, NINE, SPACE, POINT, SLASH, QUOTE] = [0x30, 0x39, 0x20, 0x2e, 0x2f, 0x22];
const [LETTER_C, LETTER_I, LETTER_M, LETTER_N] = [0x63, 0x69, 0x6d, 0x6e];

/** Powers of ten that a double holds exactly. */
const TENS = Float64Array.from({ length: 16 }, (_, power) => 10 ** power);
/** So many digits and their length in tenths of a millimetre are exact whole numbers. */
const MOST_DIGITS = 9;

/**
 * Reads a length in quotation marks, as most people write it: `43.2 cm`, `432 mm`, `1.71 m`, `17 in`, `17.25 in`,
 * `17 1/4 in`. Every figure is one division of two exact whole numbers, so that it is the double nearest to what
 * was written. Whether it is such a length; anything else is for `safeParseLength`.
 */
export function scanLength(person: ScannedPerson): boolean {
  const { bytes } = person;
  if (bytes[person.at] !== QUOTE) return false;
  person.at += 1;
  const whole = scanDigits(person);
  if (whole < 0) return false;
  let numerator = whole;
  let denominator = 1;
  let tens = 0;
  if (bytes[person.at] === POINT) {
    const start = person.at + 1;
    person.at = start;
    while (isDigit(bytes[person.at] as number)) {
      numerator = numerator * 10 + ((bytes[person.at] as number) - ZERO);
      person.at += 1;
    }
    tens = person.at - start;
    if (tens === 0 || tens > 4) return false;
  }
  if (bytes[person.at] === SPACE) person.at += 1;
  if (tens === 0 && isDigit(bytes[person.at] as number)) {
    const top = scanDigits(person);
    if (top <= 0 || bytes[person.at] !== SLASH) return false;
    person.at += 1;
    denominator = scanDigits(person);
    if (!(denominator > top && denominator <= 64)) return false;
    numerator = whole * denominator + top;
    if (bytes[person.at] === SPACE) person.at += 1;
  }
  return numerator > 0 && scanUnit(person, numerator, denominator, tens);
}

function scanUnit(person: ScannedPerson, numerator: number, denominator: number, tens: number): boolean {
  const { bytes } = person;
  const first = bytes[person.at];
  const second = bytes[person.at + 1];
  // Tenths of a millimetre.
  let tenths: number;
  let length = 2;
  if (first === LETTER_C && second === LETTER_M) tenths = 100;
  else if (first === LETTER_I && second === LETTER_N) tenths = 254;
  else if (first === LETTER_M && second === LETTER_M) {
    // Three decimals of a millimetre may be thousands.
    if (tens === 3) return false;
    tenths = 10;
  } else if (first === LETTER_M) {
    tenths = 10_000;
    length = 1;
  } else return false;
  if (bytes[person.at + length] !== QUOTE) return false;
  person.at += length + 1;
  const share = denominator * 10 * (TENS[tens] as number);
  person.lengthMm = (numerator * tenths) / share;
  person.stepMm = tenths / share;
  person.system = tenths === 254 ? 2 : 1;
  return true;
}

/** A whole number without a zero before it; -1 where there is none, or a long one. */
function scanDigits(person: ScannedPerson): number {
  const { bytes } = person;
  const start = person.at;
  let value = 0;
  while (isDigit(bytes[person.at] as number)) {
    value = value * 10 + ((bytes[person.at] as number) - ZERO);
    person.at += 1;
  }
  const count = person.at - start;
  if (count === 0 || count > MOST_DIGITS - 4) return -1;
  return count > 1 && bytes[start] === ZERO ? -1 : value;
}

function isDigit(byte: number): boolean {
  return byte >= ZERO && byte <= NINE;
}
