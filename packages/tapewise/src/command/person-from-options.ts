import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import { personFields } from "../schema/person-schema.ts";
import { joinReadings } from "./join-readings.ts";

/** The options of `choose` that describe the person, by commander's names for them. */
export type PersonOptions = Readonly<Record<string, unknown>>;

/** The dimensions that have an option of their own for their readings. The stature is a field of the person. */
export const readDimensions: readonly DimensionId[] = dimensionIds.filter((id) => id !== "stature");

/** Puts what the command line says over what a person's file says. */
export function personFromOptions(options: PersonOptions, file: unknown): unknown {
  const readings: Record<string, unknown> = {};
  for (const dimension of readDimensions) {
    const words = options[camelCase(dimension)];
    if (Array.isArray(words)) readings[dimension] = joinReadings(words.map(String));
  }
  const said: Record<string, unknown> = {};
  for (const field of personFields) {
    if (options[field] !== undefined) said[field] = options[field];
  }
  if (options.afresh !== undefined) said.landmarksFoundAfresh = options.afresh;
  if (!isObject(file)) return file === undefined ? { ...said, readings } : file;
  return {
    ...file,
    ...said,
    readings: isObject(file.readings) ? { ...file.readings, ...readings } : readings,
  };
}

/** Whether the command line alone holds any reading, the stature included. */
export function hasReadings(options: PersonOptions): boolean {
  return (
    options.stature !== undefined ||
    readDimensions.some((dimension) => options[camelCase(dimension)] !== undefined)
  );
}

function camelCase(name: string): string {
  return name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
