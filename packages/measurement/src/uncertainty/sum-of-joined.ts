import { InvalidArgumentError } from "@tapewise/outcome";
import { requireNotNegative } from "../require-number.ts";
import type { UncertainInput } from "./measurement-model.ts";
import { type Propagation, propagateUncertainty } from "./propagate-uncertainty.ts";

/** A length with its standard uncertainty, both in mm. */
export interface UncertainReading {
  readonly mm: number;
  readonly uncertaintyMm: number;
  /** Degrees of freedom, above 0; infinite where they are left out. */
  readonly degreesOfFreedom?: number;
}

/** What lengths that are read with one tool have in common. */
export interface SharedScale {
  /** Half-width of the scale error as a part of the length, rectangular; 0 where it is left out. */
  readonly scaleHalfWidth?: number;
}

/** How pieces were joined. */
export interface JoinOptions extends SharedScale {
  /** Standard uncertainty of one joint, in mm; 0 where it is left out. */
  readonly jointMm?: number;
}

/**
 * A length read in pieces, such as a short rule laid end to end: the sum of the pieces in mm. The pieces and the
 * joints between them err independently, the scale of the rule is off in all pieces alike, so that its part grows
 * with the whole length and not with the root of the number of pieces (GUM 5.1.2, F.1.2.3).
 *
 * @throws {@link InvalidArgumentError} when there is no piece, a figure is not finite or out of range.
 *
 * @example
 * ```ts
 * import { sumOfJoined } from "@tapewise/measurement";
 * const pieces = [300, 136].map((mm) => ({ mm, uncertaintyMm: 0.6 }));
 * const torso = sumOfJoined(pieces, { jointMm: 2 });
 * [torso.value, torso.uncertainty.toFixed(2)]; // => [436, "2.17"]
 * ```
 */
export function sumOfJoined(pieces: readonly UncertainReading[], options: JoinOptions = {}): Propagation {
  if (pieces.length === 0) throw new InvalidArgumentError("pieces", pieces, "at least one piece");
  const { jointMm = 0, scaleHalfWidth = 0 } = options;
  requireNotNegative("jointMm", jointMm);
  const joints = Array.from({ length: pieces.length - 1 }, (_, i) => ({
    name: `joint ${i + 1}`,
    value: 0,
    uncertainty: jointMm,
  }));
  const named = pieces.map((piece, i) => inputOf(`piece ${i + 1}`, piece));
  const wholeMm = pieces.reduce((sum, { mm }) => sum + mm, 0);
  return linear([...named, ...joints], () => 1, scaleHalfWidth, wholeMm);
}

/** A reading as an input of a measurement. */
export function inputOf(name: string, reading: UncertainReading): UncertainInput {
  const { mm, uncertaintyMm, degreesOfFreedom } = reading;
  return {
    name,
    value: mm,
    uncertainty: uncertaintyMm,
    ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
  };
}

/** A sum of signed inputs and of the scale error, which is 0 give or take a part of the whole. */
export function linear(
  parts: readonly UncertainInput[],
  signOf: (position: number) => number,
  scaleHalfWidth: number,
  wholeMm: number,
): Propagation {
  requireNotNegative("scaleHalfWidth", scaleHalfWidth);
  const scale = { name: "scale", value: 0, uncertainty: scaleHalfWidth / Math.sqrt(3) };
  const inputs = scaleHalfWidth === 0 ? parts : [...parts, scale];
  const sensitivities = inputs.map((input, i) => (input === scale ? wholeMm : signOf(i)));
  return propagateUncertainty({
    inputs,
    sensitivities,
    model: (values) => sensitivities.reduce((sum, slope, i) => sum + slope * (values[i] as number), 0),
  });
}
