import { buildFeatures } from "@tapewise/fit";
import { dimensionIds, measurers, tools } from "@tapewise/landmarks";
import { lengthUnits } from "@tapewise/units";
import * as z from "zod";
import { personCuts } from "../person/choices.ts";
import type { PersonLine } from "../person/person-line.ts";

/** So many readings of one dimension nobody takes; more of them are a mistake in the data. */
const MOST_READINGS = 200;

const length: z.ZodType<string | number> = z
  .union([z.string(), z.number()])
  .describe('A length with its unit, such as "43.2 cm" or "17 in"; a bare number only beside "unit".');

const millimetres: z.ZodType<number> = z.number().min(0);

const statedError: z.ZodType = z
  .strictObject({ biasMm: millimetres, repeatMm: millimetres, resolutionMm: millimetres })
  .describe(
    "Error of the readings where it is known: standard deviations in mm of the lasting bias and of one reading, and the step that readings are rounded to.",
  );

const readings: z.ZodType = z
  .strictObject(
    Object.fromEntries(dimensionIds.map((id) => [id, z.array(length).max(MOST_READINGS).nullish()])),
  )
  .describe("Readings of each dimension as they were written down, in the order in which they were taken.");

const shape = {
  id: z.union([z.string(), z.int()]).nullish().describe("Comes back unchanged with the answer."),
  cut: z.enum(personCuts).nullish().describe("Whose survey figures stand for what is known beforehand."),
  stature: length.nullish().describe("Standing height with its unit."),
  measuredBy: z.enum(measurers).nullish(),
  tool: z.enum(tools).nullish(),
  ruleLength: length.nullish().describe("Length of the rule, for the tool short-rule."),
  landmarksFoundAfresh: z
    .boolean()
    .nullish()
    .describe("Whether the bones were found anew before every reading."),
  unit: z.enum(lengthUnits).nullish().describe("The unit of lengths that name none."),
  error: statedError.nullish(),
  build: z.array(z.enum(buildFeatures)).nullish(),
  firstPack: z.boolean().nullish(),
  readings: readings.nullish(),
} satisfies Record<keyof PersonLine, z.ZodType>;

/**
 * One person: a line of the batch contract. Fields that are not named here may be present; they are
 * reported and not used. `null` says the same as a field that is left out.
 */
export const personSchema: z.ZodType = z
  .looseObject(shape)
  .refine(saysAnything)
  .meta({
    title: "Tapewise person",
    description: "One line of what `tapewise batch` reads.",
    // The check above, which a schema cannot be made of.
    anyOf: [
      { properties: { readings: true }, required: ["readings"] },
      { properties: { stature: true }, required: ["stature"] },
    ],
  });

/** A chart may size by the stature, which is then all that it takes. */
function saysAnything({ readings, stature }: { readings?: unknown; stature?: unknown }): boolean {
  return readings !== undefined || stature !== undefined;
}

/** The fields of a person, in the order of the schema. */
export const personFields: readonly (keyof PersonLine)[] = Object.keys(shape) as (keyof PersonLine)[];
