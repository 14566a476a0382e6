export { fromMillimetres, toMillimetres } from "./convert.ts";
export { describeUnit } from "./describe-unit.ts";
export { unitsIssues } from "./issues.ts";
export { type LengthUnit, lengthUnits, type UnitDescription } from "./length-unit.ts";
export { type Millimetres, millimetres } from "./millimetres.ts";
export { type LengthReading, type ParseLengthOptions, parseLength, safeParseLength } from "./parse-length.ts";
export {
  type Magnitude,
  type ParseMagnitudeOptions,
  parseMagnitude,
  safeParseMagnitude,
} from "./parse-magnitude.ts";
export type { DecimalMark } from "./read-number.ts";
