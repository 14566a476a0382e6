export { chartJsonSchema, chartSchema } from "@tapewise/charts/schema";
export { batchLineSchema, choiceLineSchema, issueLineSchema } from "./choice-schema.ts";
export { choiceJsonSchema, type JsonSchema, outcomeJsonSchema, personJsonSchema } from "./json-schemas.ts";
export { outcomeSchema } from "./outcome-schema.ts";
export { personSchema } from "./person-schema.ts";
