// Reading a chart from JSON and from CSV, beside the bare check of its form.
import { safeParseChart } from "@tapewise/charts";
import { chartSchema } from "tapewise/schema";
import type { Suite } from "./suite.ts";

const names = ["XS", "S", "M", "L", "XL", "XXL", "3XL", "4XL"];
const json = JSON.stringify({
  chart: "Eight sizes",
  sizes: names.map((size, k) => ({
    size,
    "torso-length": { from: `${34 + 3 * k} cm`, to: `${38.5 + 3 * k} cm` },
    "hip-belt-girth": { from: `${62 + 6 * k} cm`, to: `${84 + 8 * k} cm` },
  })),
});
const csv = [
  "size,torso-length (cm),hip-belt-girth (cm)",
  ...names.map((size, k) => `${size},${34 + 3 * k}-${38.5 + 3 * k},${62 + 6 * k}-${84 + 8 * k}`),
].join("\n");

/** The suite of charts. */
export const chartsSuite: Suite = {
  name: "charts",
  title: "A chart of eight sizes and two dimensions, from text",
  async prepare() {
    return {
      baseline: "zod alone: JSON.parse and parse",
      note: "zod tells the form and no more: lengths stay text there, and nothing is said of line and column.",
      tasks: [
        { name: "zod alone: JSON.parse and parse", work: () => chartSchema.parse(JSON.parse(json)) },
        { name: "safeParseChart, JSON", work: () => safeParseChart(json, { format: "json" }) },
        {
          name: "safeParseChart, CSV",
          work: () => safeParseChart(csv, { format: "csv", chart: "Eight sizes" }),
        },
      ],
    };
  },
};
