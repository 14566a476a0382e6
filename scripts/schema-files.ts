import { chartJsonSchema, choiceJsonSchema, outcomeJsonSchema, personJsonSchema } from "tapewise/schema";

/** The JSON Schemas that the packages carry as files, by path. */
export function schemaFiles(): ReadonlyMap<string, unknown> {
  return new Map<string, unknown>([
    ["packages/charts/src/chart.schema.json", chartJsonSchema()],
    ["packages/tapewise/src/schema/person.schema.json", personJsonSchema()],
    ["packages/tapewise/src/schema/choice.schema.json", choiceJsonSchema()],
    ["packages/tapewise/src/schema/outcome.schema.json", outcomeJsonSchema()],
  ]);
}
