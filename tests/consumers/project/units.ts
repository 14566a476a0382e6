// What somebody writes who takes one package alone, without Node's types or a browser's.
import { InvalidArgumentError, type Outcome } from "@tapewise/outcome";
import {
  formatLength,
  type LengthReading,
  type Millimetres,
  millimetres,
  parseLength,
  safeParseLength,
} from "@tapewise/units";

const strap: LengthReading = parseLength("17 in");
const doubled: Millimetres = millimetres(strap.mm * 2);
const bare: Outcome<LengthReading> = safeParseLength("19");

// @ts-expect-error a bare number has no unit
const unmeasured: Millimetres = 19;

function refuses(make: () => unknown): boolean {
  try {
    make();
    return false;
  } catch (error) {
    return error instanceof InvalidArgumentError;
  }
}

export const answer = {
  mm: strap.mm,
  doubled: formatLength(doubled, { unit: "cm", decimals: 1, rounding: "half-even" }),
  bare: bare.ok ? "read" : bare.issues[0].code,
  unmeasured,
  refusesNaN: refuses(() => millimetres(Number.NaN)),
};
