import { dimensionIds } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite } from "../require-argument.ts";
import type { About, Box, Known, Variable } from "./joint-model.ts";

/** Every {@link Variable}. */
const allVariables: readonly Variable[] = [...dimensionIds, "mass-kg"];

/**
 * The unit of a variable's figures.
 *
 * @throws {@link InvalidArgumentError} when the variable is unknown.
 *
 * @example
 * ```ts
 * import { variableUnit } from "@tapewise/population";
 * variableUnit("torso-length"); // => "mm"
 * variableUnit("mass-kg"); // => "kg"
 * ```
 */
export function variableUnit(variable: Variable): "mm" | "kg" {
  if (!allVariables.includes(variable)) {
    throw new InvalidArgumentError("variable", variable, 'a dimension id or "mass-kg"');
  }
  return variable === "mass-kg" ? "kg" : "mm";
}

/** Refuses a list of variables that is empty, names one twice or one that does not exist. */
export function requireVariables(argument: string, variables: readonly Variable[]): void {
  if (!(Array.isArray(variables) && variables.length > 0)) {
    throw new InvalidArgumentError(argument, variables, "at least one variable");
  }
  for (const variable of variables) variableUnit(variable);
  if (new Set(variables).size !== variables.length) {
    throw new InvalidArgumentError(argument, variables.join(", "), "different variables");
  }
}

/** The place of a variable in a model. */
export function placeOf(variables: readonly Variable[], variable: Variable): number {
  const place = variables.indexOf(variable);
  if (place >= 0) return place;
  throw new InvalidArgumentError("variable", variable, `one of ${variables.join(", ")}`);
}

/** What is known, by the place of each variable in a model; at least one thing must be. */
export function placesKnown(
  variables: readonly Variable[],
  known: Known,
): readonly (readonly [place: number, value: number])[] {
  const entries = Object.entries(known) as [Variable, number | undefined][];
  const given = entries.flatMap(([variable, value]) => {
    if (value === undefined) return [];
    requireFinite(variable, value);
    return [[placeOf(variables, variable), value] as const];
  });
  if (given.length > 0) return given;
  throw new InvalidArgumentError("known", known, "at least one known value");
}

/** The bounds of a box, by the place of each variable in a model. */
export function placesBounded(
  variables: readonly Variable[],
  box: Box,
): readonly { readonly place: number; readonly within: NonNullable<Box[Variable]> }[] {
  const entries = Object.entries(box) as [Variable, Box[Variable]][];
  return entries.flatMap(([variable, within]) => {
    if (within === undefined) return [];
    if (!(within.from <= within.to)) {
      throw new InvalidArgumentError(`box["${variable}"]`, `${within.from} to ${within.to}`, "an interval");
    }
    return [{ place: placeOf(variables, variable), within }];
  });
}

/** Refuses figures without a label or a source. */
export function requireAbout(about: About): void {
  for (const part of ["label", "source", "caveat"] as const) {
    if (typeof about?.[part] !== "string")
      throw new InvalidArgumentError(`about.${part}`, about?.[part], "a text");
  }
  if (about.label === "" || about.source === "") {
    throw new InvalidArgumentError(
      "about",
      about.label || about.source,
      "a label and a source that are not empty",
    );
  }
}

/** A label to which is added what is known: "women, stature 1710 mm, body mass 64 kg". */
export function describeKnown(label: string, known: Known): string {
  const parts = Object.entries(known).flatMap(([variable, value]) => {
    if (value === undefined) return [];
    const amount = Math.round(value * 10) / 10;
    return variable === "mass-kg"
      ? [`body mass ${amount} kg`]
      : [`${variable.replaceAll("-", " ")} ${amount} mm`];
  });
  return [label, ...parts].join(", ");
}
