/**
 * Lengths and names of the units, and the words that people write for units.
 *
 * Lengths: the metre and its parts by the SI; 1 in = 25.4 mm and 1 ft = 12 in exactly since the
 * international yard and pound agreement of 1959, as tabulated in NIST SP 811 (2008), Appendix B.8.
 * Written in whole nanometres, so that every 1/64 in (396 875 nm) is a whole number too.
 *
 * Words: common practice, no source. Lower case only, because readers fold case first: nobody measures
 * a body in megametres, so `MM` and `Mm` are millimetres and `M` is the metre.
 */
import type { LengthUnit, UnitDescription } from "./length-unit.ts";

export const UNIT_FACTS: Readonly<Record<LengthUnit, UnitDescription>> = {
  mm: { symbol: "mm", name: "millimetre", plural: "millimetres", system: "metric", nanometres: 1_000_000 },
  cm: { symbol: "cm", name: "centimetre", plural: "centimetres", system: "metric", nanometres: 10_000_000 },
  m: { symbol: "m", name: "metre", plural: "metres", system: "metric", nanometres: 1_000_000_000 },
  in: { symbol: "in", name: "inch", plural: "inches", system: "inch-pound", nanometres: 25_400_000 },
  ft: { symbol: "ft", name: "foot", plural: "feet", system: "inch-pound", nanometres: 304_800_000 },
};

/** Every accepted word or mark for each unit. */
export const UNIT_WORDS: Readonly<Record<LengthUnit, readonly string[]>> = {
  mm: ["mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters"],
  cm: ["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"],
  m: ["m", "metre", "metres", "meter", "meters"],
  in: ["in", "ins", "inch", "inches", '"', "''"],
  ft: ["ft", "fts", "foot", "feet", "'"],
};

/** Words, in the singular, for units of other kinds. */
export const OTHER_UNIT_WORDS: Readonly<Record<string, readonly string[]>> = {
  mass: ["g", "kg", "kilo", "lb", "pound", "oz", "ounce", "st", "stone"],
  volume: ["l", "ltr", "litre", "liter", "ml", "cl", "gal", "gallon"],
  "angle or temperature": ["°", "deg", "degree"],
  proportion: ["%", "percent", "‰"],
  time: ["s", "sec", "second", "min", "minute", "h", "hr", "hour"],
};

/** Words, in the singular, for units of length that are not read: no tape for bodies is marked in them. */
export const UNREAD_LENGTH_WORDS: readonly string[] = [
  "km",
  "dm",
  "μm",
  "nm",
  "yd",
  "yard",
  "mi",
  "mile",
  "hand",
];
