import { measurers, tools } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { SHORTEST_RULE_MM } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import { isErrorMm, LARGEST_ERROR_MM } from "./require-argument.ts";

const ERROR = `a number of millimetres from 0 to ${LARGEST_ERROR_MM}`;

/**
 * Refuses a table of defaults that gives no error budget. Two degrees of freedom or fewer are refused
 * because Student's t then has no finite variance, and an uncertainty would mean nothing.
 */
export function requireDefaults(defaults: ErrorDefaults): void {
  if (defaults === errorDefaults) return;
  const { hands, degreesOfFreedom, ruleLengthMm } = defaults;
  for (const kind of ["length along the body", "girth", "straight height", "breadth"] as const) {
    for (const who of measurers) {
      for (const part of ["handlingMm", "findingMm", "lastingMm"] as const) {
        const value: unknown = hands?.[kind]?.[who]?.[part];
        const argument = `defaults.hands["${kind}"].${who}.${part}`;
        if (!isErrorMm(value)) throw new InvalidArgumentError(argument, value, ERROR);
      }
    }
  }
  for (const tool of tools) {
    for (const part of ["scaleHalfWidth", "transferMm", "jointMm"] as const) {
      const value: unknown = defaults.tools?.[tool]?.[part];
      const isGood = isErrorMm(value) && (part !== "scaleHalfWidth" || Number(value) < 1);
      const expected = part === "scaleHalfWidth" ? "a part of the length, from 0 to below 1" : ERROR;
      if (!isGood) throw new InvalidArgumentError(`defaults.tools["${tool}"].${part}`, value, expected);
    }
  }
  if (!(typeof degreesOfFreedom === "number" && degreesOfFreedom > 2)) {
    throw new InvalidArgumentError("defaults.degreesOfFreedom", degreesOfFreedom, "a number above 2");
  }
  if (!(Number.isFinite(ruleLengthMm) && ruleLengthMm >= SHORTEST_RULE_MM)) {
    const expected = `a finite number of millimetres, ${SHORTEST_RULE_MM} or more`;
    throw new InvalidArgumentError("defaults.ruleLengthMm", ruleLengthMm, expected);
  }
}
