import { nextStepTexts, reasonTexts, type Verdict } from "@tapewise/fit";
import { dimensionIds } from "@tapewise/landmarks";
import * as z from "zod";

const verdicts: readonly Verdict[] = [
  "fits",
  "two-sizes-fit",
  "between-sizes",
  "outside-the-range",
  "measure-again",
];

const id: z.ZodType = z
  .union([z.string(), z.number(), z.null()])
  .describe("As it came in; null where none was given.");

const probability: z.ZodType = z.number().min(0).max(1);

const scalar: z.ZodType = z.union([z.string(), z.number(), z.boolean(), z.null()]);

const issue: z.ZodType = z.strictObject({
  code: z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/),
  severity: z.enum(["error", "warning"]),
  path: z
    .array(z.union([z.string(), z.int()]))
    .describe("Names and positions from the outermost to the place."),
  message: z.string().min(1),
  received: scalar,
  expected: z.string().min(1),
  facts: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
});

const estimate: z.ZodType = z.strictObject({
  mm: z.number().positive().describe("Mean of the readings in mm."),
  uncertaintyMm: z.number().min(0).describe("Combined standard uncertainty in mm."),
});

const size: z.ZodType = z.strictObject({
  size: z.string(),
  probability: probability.describe("Probability that the size fits in every judged dimension."),
  expectedMisfitMm: z
    .number()
    .min(0)
    .describe("Expected distance from the body to the size's ranges, in mm."),
});

const nextStep: z.ZodType = z.strictObject({
  code: z.enum(Object.keys(nextStepTexts)),
  sentence: z.string().min(1),
});

const choice: z.ZodType = z.strictObject({
  chart: z.string(),
  verdict: z.enum(verdicts),
  pick: z.string(),
  probability: probability.describe("Probability that the picked size fits."),
  sizes: z.array(size),
  reasons: z.array(z.enum(Object.keys(reasonTexts))),
  belt: z
    .strictObject({ pick: z.string(), probability, sizes: z.array(size) })
    .optional()
    .describe("The hip belt, where belts are sized separately and something was read that they go by."),
  next: z.array(nextStep).optional().describe("What to do next. Written by `tapewise choose --json` only."),
});

/** The answer for one person: what `tapewise batch` writes for a good line, and `tapewise choose --json`. */
export const choiceLineSchema: z.ZodType = z.strictObject({
  id,
  estimates: z.partialRecord(z.enum(dimensionIds), estimate),
  choices: z.array(choice).describe("One for each chart that could be judged."),
  issues: z
    .array(issue)
    .min(1)
    .optional()
    .describe("Questions about the readings, and charts that could not be judged."),
});

/** What `tapewise batch` writes for a line that no choice was made for. */
export const issueLineSchema: z.ZodType = z.strictObject({ id, issues: z.array(issue).min(1) });

/** Any line that `tapewise batch` writes. */
export const batchLineSchema: z.ZodType = z
  .union([choiceLineSchema, issueLineSchema])
  .meta({ title: "Tapewise choice", description: "One line of what `tapewise batch` writes." });
