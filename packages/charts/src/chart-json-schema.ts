import * as z from "zod";
import { chartSchema, schemaTexts } from "./chart-schema.ts";

/**
 * The JSON form of a size chart as JSON Schema, draft 2020-12, made from {@link chartSchema}. Rules that
 * join several fields are not in it; its description names them.
 *
 * @example
 * ```ts
 * import { chartJsonSchema } from "@tapewise/charts/schema";
 * chartJsonSchema().$schema; // => "https://json-schema.org/draft/2020-12/schema"
 * chartJsonSchema().required; // => ["chart", "sizes"]
 * ```
 */
export function chartJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(chartSchema, {
    target: "draft-2020-12",
    metadata: schemaTexts,
  });
  return { $schema, $id: "urn:tapewise:chart", ...schema };
}
