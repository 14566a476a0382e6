import { chartJsonSchema } from "@tapewise/charts/schema";
import { Argument, type Command } from "commander";
import { choiceJsonSchema, outcomeJsonSchema, personJsonSchema } from "../../schema/json-schemas.ts";
import type { Context } from "../context.ts";
import { printJson } from "../io.ts";

type SchemaName = "chart" | "person" | "choice" | "outcome";

const SCHEMAS: Readonly<Record<SchemaName, () => unknown>> = {
  chart: chartJsonSchema,
  person: personJsonSchema,
  choice: choiceJsonSchema,
  outcome: outcomeJsonSchema,
};

/** `tapewise schema`: the published forms of what goes in and comes out. */
export function addSchema(program: Command, { io }: Context): void {
  program
    .command("schema")
    .summary("print the JSON Schema of charts, people, choices or outcomes")
    .description(
      "Prints a JSON Schema (draft 2020-12): of chart files, of the people that batch reads, of the choices that it writes, or of a log of what became of them.",
    )
    .addArgument(new Argument("<what>", "which one").choices(Object.keys(SCHEMAS)))
    .addHelpText("after", "\nExample:\n  tapewise schema person > person.schema.json")
    .action((what: SchemaName) => printJson(io.stdout, SCHEMAS[what]()));
}
