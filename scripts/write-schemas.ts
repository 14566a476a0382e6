// Writes the JSON Schemas that the packages carry as files, from the schemas in the code: `npm run write:schemas`.
// A test compares the files with the code.
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { schemaFiles } from "./schema-files.ts";

for (const [path, schema] of schemaFiles()) {
  writeFileSync(
    fileURLToPath(new URL(`../${path}`, import.meta.url)),
    `${JSON.stringify(schema, null, 2)}\n`,
  );
}
