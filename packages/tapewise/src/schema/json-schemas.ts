import * as z from "zod";
import { batchLineSchema } from "./choice-schema.ts";
import { outcomeSchema } from "./outcome-schema.ts";
import { personSchema } from "./person-schema.ts";

/** A JSON Schema, draft 2020-12. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * The JSON Schema (draft 2020-12) of one line of what `tapewise batch` reads. It tells the form; whether
 * a text is a length, a schema cannot say.
 *
 * @example
 * ```ts
 * import { personJsonSchema } from "tapewise/schema";
 * personJsonSchema().title; // => "Tapewise person"
 * ```
 */
export function personJsonSchema(): JsonSchema {
  return identified("urn:tapewise:person", z.toJSONSchema(personSchema, { io: "input" }));
}

/**
 * The JSON Schema (draft 2020-12) of one line of what `tapewise batch` writes, be it a choice or issues.
 *
 * @example
 * ```ts
 * import { choiceJsonSchema } from "tapewise/schema";
 * choiceJsonSchema().$schema; // => "https://json-schema.org/draft/2020-12/schema"
 * ```
 */
export function choiceJsonSchema(): JsonSchema {
  return identified("urn:tapewise:choice", z.toJSONSchema(batchLineSchema));
}

/**
 * The JSON Schema (draft 2020-12) of one line of a log of outcomes.
 *
 * @example
 * ```ts
 * import { outcomeJsonSchema } from "tapewise/schema";
 * outcomeJsonSchema().required; // => ["v", "at", "product", "size", "outcome"]
 * ```
 */
export function outcomeJsonSchema(): JsonSchema {
  return identified("urn:tapewise:outcome", z.toJSONSchema(outcomeSchema, { io: "input" }));
}

function identified(id: string, { $schema, ...schema }: JsonSchema): JsonSchema {
  return { $schema, $id: id, ...schema };
}
