export { chartJsonSchema } from "./chart-json-schema.ts";
export { chartSchema } from "./chart-schema.ts";
