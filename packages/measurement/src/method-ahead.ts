import { dimensionKind } from "@tapewise/landmarks";
import type { Anticipation } from "./anticipation.ts";
import { assumeConditions, type KnownConditions } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import { type MethodError, methodFromDefaults } from "./method-error.ts";
import { requireLength, requireStep } from "./require-argument.ts";
import { requireDefaults } from "./require-defaults.ts";

/** How readings not yet taken will err, cause by cause, and what that was made from. */
export interface MethodAhead {
  readonly defaults: ErrorDefaults;
  readonly known: KnownConditions;
  readonly method: MethodError;
}

/** The method of readings that are not yet taken, by the table of defaults, once all that the caller says is checked. */
export function methodAhead(reading: Omit<Anticipation, "count">): MethodAhead {
  const { dimension, lengthMm, stepMm, conditions, defaults = errorDefaults } = reading;
  requireLength("lengthMm", lengthMm);
  requireStep("stepMm", stepMm);
  requireDefaults(defaults);
  const known = assumeConditions(conditions, defaults.ruleLengthMm);
  return { defaults, known, method: methodFromDefaults(dimensionKind(dimension), lengthMm, known, defaults) };
}
