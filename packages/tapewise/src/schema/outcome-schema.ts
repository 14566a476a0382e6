import {
  exchangeReasons,
  LONGEST_NAME,
  OUTCOME_MOMENT,
  OUTCOME_VERSION,
  type OutcomeEstimate,
  type OutcomeProduct,
  type OutcomeRow,
  outcomeKinds,
} from "@tapewise/afterwards";
import { dimensionIds } from "@tapewise/landmarks";
import * as z from "zod";

const name: z.ZodType<string> = z.string().min(1).max(LONGEST_NAME);

const estimateShape = {
  mm: z.number().positive().describe("Mean of the readings in mm."),
  uncertaintyMm: z.number().min(0).describe("Combined standard uncertainty in mm."),
  degreesOfFreedom: z
    .number()
    .positive()
    .optional()
    .describe("Effective degrees of freedom; left out where the uncertainty counts as known."),
} satisfies Record<keyof OutcomeEstimate, z.ZodType>;

const productShape = {
  maker: name.optional(),
  chart: name.describe("The chart's own name, as a choice has it."),
} satisfies Record<keyof OutcomeProduct, z.ZodType>;

const shape = {
  v: z.literal(OUTCOME_VERSION).describe("Version of the form of the row."),
  id: name.optional().describe("A name of the row that no other has."),
  at: z
    .string()
    .regex(OUTCOME_MOMENT)
    .describe("When it was known: an ISO 8601 date, or a date and time with its offset from UTC."),
  person: name
    .optional()
    .describe("A pseudonym that means nothing to others; rows without one cannot be forgotten."),
  product: z.looseObject(productShape),
  size: name,
  outcome: z.enum(outcomeKinds),
  reason: z.enum(exchangeReasons).optional().describe("Only of an exchange."),
  exchangedFor: name.optional().describe("Only of an exchange: the size that was taken in its place."),
  estimates: z
    .looseObject(Object.fromEntries(dimensionIds.map((id) => [id, z.looseObject(estimateShape).optional()])))
    .optional()
    .describe("What was believed of each dimension when the size was chosen."),
} satisfies Record<keyof OutcomeRow, z.ZodType>;

/**
 * What became of one pack that somebody was given: a line of a log. Fields that are not named here may be present;
 * they are reported and not used.
 */
export const outcomeSchema: z.ZodType = z
  .looseObject(shape)
  .refine(agrees)
  .meta({
    title: "Tapewise outcome",
    description: "One line of a log of what became of choices.",
    // The check above, which a schema cannot be made of.
    if: { properties: { outcome: { const: "kept" } }, required: ["outcome"] },
    // biome-ignore lint/suspicious/noThenProperty: it is the word of JSON Schema.
    then: { properties: { reason: false, exchangedFor: false } },
  });

/** What the fields that go together say. */
interface Claims {
  readonly outcome?: unknown;
  readonly reason?: unknown;
  readonly exchangedFor?: unknown;
}

/** A reason and another size belong to an exchange. */
function agrees({ outcome, reason, exchangedFor }: Claims): boolean {
  return outcome !== "kept" || (reason === undefined && exchangedFor === undefined);
}
