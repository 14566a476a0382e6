// What somebody writes who checks charts and people before they reach the library.
import { chartSchema, personJsonSchema } from "tapewise/schema";

const size = { size: "S", "torso-length": { from: "38 cm", to: "43 cm" } };

export const answer = {
  chart: chartSchema.safeParse({ chart: "Crew shelf", sizes: [size] }).success,
  number: chartSchema.safeParse(43).success,
  draft: personJsonSchema().$schema,
};
