import * as z from "zod";
import type { BeltData, ChartData, RangeData, RangeEndsData, SizeData } from "./chart-data.ts";
import { LONGEST_CELL, MOST_SIZES } from "./data.ts";
import { type ChartDimension, chartDimensions, cuts, harnessKinds, swappableParts } from "./size-chart.ts";

/** What a part of the schema says of itself in the JSON Schema; a part with an `id` becomes a definition. */
interface SchemaText {
  readonly id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly examples?: unknown[];
}

/** The texts are kept beside the schemas and not in zod's global registry, which others share. */
export const schemaTexts: z.core.$ZodRegistry<SchemaText> = z.registry<SchemaText>();

const name = z.string().max(LONGEST_CELL).regex(/\S/);

const length = z
  .string()
  .min(1)
  .max(64)
  .register(schemaTexts, {
    id: "length",
    description: "A length with its unit: mm, cm, m, in or ft.",
    examples: ["38 cm", "15 1/2 in"],
  });

const cell = z
  .string()
  .max(LONGEST_CELL)
  .register(schemaTexts, {
    id: "cell",
    description: "A range, one nominal length or an open end, as a table would have it, with the unit.",
    examples: ["38-43 cm", "46 cm", "up to 104 cm", "48 cm and up"],
  });

const from = length
  .optional()
  .register(schemaTexts, { description: "The lower end; left out, the range is open below." });
const to = length
  .optional()
  .register(schemaTexts, { description: "The upper end; left out, the range is open above." });
const nominal = length.optional().register(schemaTexts, {
  description: "The one length that the chart states; without from and to its range is inferred.",
});

const rangeEnds: z.ZodType<RangeEndsData> = z
  .strictObject({ from, to, nominal })
  .register(schemaTexts, { id: "range-ends", description: "The ends of a range, or a nominal length." });

const also = z.union([cell, rangeEnds]).optional().register(schemaTexts, {
  description: "The same range in another unit, as the chart prints it. It is checked, not used.",
});

const range: z.ZodType<string | RangeData> = z
  .union([cell, z.strictObject({ from, to, nominal, also })])
  .register(schemaTexts, { id: "range", description: "What a size states of one dimension." });

const optionalRange = range.optional();

const ranges = Object.fromEntries(chartDimensions.map((dimension) => [dimension, optionalRange])) as Record<
  ChartDimension,
  typeof optionalRange
>;

const size: z.ZodType<SizeData> = z
  .strictObject({
    size: name.clone().register(schemaTexts, {
      description: "The name of the size, once in a chart.",
      examples: ["M", "S/M", "One size"],
    }),
    covers: z
      .array(name)
      .optional()
      .register(schemaTexts, { description: "The sizes it covers, where the name does not say it." }),
    ...ranges,
    capacityLitres: z
      .number()
      .positive()
      .optional()
      .register(schemaTexts, { description: "The volume of the pack in litres." }),
    massGrams: z
      .number()
      .positive()
      .optional()
      .register(schemaTexts, { description: "The mass of the pack in grams." }),
    harness: z
      .enum(harnessKinds)
      .optional()
      .register(schemaTexts, { description: "Where it differs from the chart's." }),
  })
  .register(schemaTexts, { id: "size", description: "One size of the pack." });

const belt: z.ZodType<BeltData> = z
  .strictObject({
    belt: name
      .clone()
      .register(schemaTexts, { description: "The name of the hip belt's size, once in a chart." }),
    ...ranges,
  })
  .register(schemaTexts, {
    id: "belt",
    description: "One size of a hip belt that is sized separately from the pack.",
  });

/**
 * The JSON form of a size chart as a zod schema (also a Standard Schema). It tells whether data have the
 * form; whether lengths can be read, ends are in order and names differ, `safeChartFromData` tells.
 *
 * @example
 * ```ts
 * import { chartSchema } from "@tapewise/charts/schema";
 * chartSchema.safeParse({ chart: "Crew pack 40", sizes: [{ size: "M", "torso-length": "43-48 cm" }] }).success; // => true
 * chartSchema.safeParse({ chart: "Crew pack 40", sizes: [] }).success; // => false
 * ```
 */
export const chartSchema: z.ZodType<ChartData> = z
  .strictObject({
    chart: name
      .clone()
      .register(schemaTexts, { description: "The chart's own name.", examples: ["Crew pack 40, women"] }),
    maker: name.optional().register(schemaTexts, { description: "Who makes the pack." }),
    product: name.optional().register(schemaTexts, { description: "Which pack it is." }),
    cut: z.enum(cuts).optional().register(schemaTexts, { description: "Whom the pack is cut for." }),
    harness: z
      .enum(harnessKinds)
      .optional()
      .register(schemaTexts, { description: "Whether the length of the back system can be set." }),
    swappable: z
      .array(z.enum(swappableParts))
      .optional()
      .register(schemaTexts, { description: "The parts that can be had in another size than the pack." }),
    sizes: z.array(size).min(1).max(MOST_SIZES),
    belts: z.array(belt).max(MOST_SIZES).optional(),
  })
  .register(schemaTexts, {
    title: "Size chart of a pack",
    description:
      "Body dimensions by size. Rules that join several fields are not in this schema: lengths must be readable, from not above to, a nominal length between them, at least one of the three in each range, names of sizes distinct, and at least one dimension stated.",
    examples: [
      {
        chart: "Crew pack 40, women",
        cut: "women",
        harness: "adjustable",
        sizes: [
          { size: "S", "torso-length": { from: "38 cm", to: "43 cm" }, capacityLitres: 38 },
          { size: "M", "torso-length": { nominal: "46 cm" }, capacityLitres: 40 },
        ],
      },
    ],
  });
