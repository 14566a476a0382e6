/**
 * Limits and constants of this package, each with where it comes from.
 */

/** The longest text that is read as a chart, in characters: a chart of 10 000 sizes has a tenth of it (assumption). */
export const LONGEST_TEXT = 1_000_000;

/** The most sizes, or hip belts, in a chart (assumption). */
export const MOST_SIZES = 50_000;

/** The most columns of a table that are read (assumption). */
export const MOST_COLUMNS = 100;

/** The deepest nesting of JSON that is handed to the parser; a chart needs five levels (assumption). */
export const DEEPEST_JSON = 32;

/** The longest cell, and the longest name of a chart or size, in characters (assumption). */
export const LONGEST_CELL = 200;

/** Overlap that neighbouring sizes of one chart usually have: 2 to 3 cm (common practice, no source). */
export const USUAL_OVERLAP_MM = 30;

/** A range narrower than this holds less than the spread of careful repeat readings (assumption). */
export const NARROWEST_RANGE_MM = 10;

/** One pound and one ounce in grams: NIST SP 811 (2008), App. B.8, 1 lb (avoirdupois) = 453.592 37 g exactly, 16 oz to the pound. */
export const GRAMS_PER_POUND = 453.59237;
export const GRAMS_PER_OUNCE: number = GRAMS_PER_POUND / 16;

/** One cubic inch in litres, from 1 in = 25.4 mm exactly: 2.54³ = 16.387064 cm³. */
export const LITRES_PER_CUBIC_INCH = 0.016387064;

/** A range wider than this share of all plausible lengths holds most people (assumption). */
export const WIDEST_RANGE_SHARE = 0.5;
