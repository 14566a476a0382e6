export { fromMillimetres, toMillimetres } from "./convert.ts";
export { type DecimalMark, decimalMarkOf } from "./decimal-mark.ts";
export { describeUnit } from "./describe-unit.ts";
export {
  type DecimalLengthFormat,
  type FormatLengthOptions,
  type FractionLengthFormat,
  formatLength,
  type InchDenominator,
} from "./format-length.ts";
export { unitsIssues } from "./issues.ts";
export { type LengthUnit, lengthUnits, type UnitDescription } from "./length-unit.ts";
export { type Millimetres, millimetres } from "./millimetres.ts";
export { type LengthReading, type ParseLengthOptions, parseLength, safeParseLength } from "./parse-length.ts";
export { type ParseLengthUnitOptions, parseLengthUnit, safeParseLengthUnit } from "./parse-length-unit.ts";
export {
  type Magnitude,
  type ParseMagnitudeOptions,
  parseMagnitude,
  safeParseMagnitude,
} from "./parse-magnitude.ts";
export { type LengthGrid, roundLength } from "./round-length.ts";
export { type RoundingRule, roundingRules } from "./rounding-rule.ts";
