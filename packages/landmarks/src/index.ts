export { type DimensionId, dimensionIds } from "./dimension-id.ts";
