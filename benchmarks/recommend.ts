// One choice from raw text on a chart of six sizes, beside zod's parse of the same input and beside the
// bare evaluations of distribution functions that the choice makes.
import { parseChart, safeParseChart } from "@tapewise/charts";
import { recommend } from "@tapewise/fit";
import { safeEstimate, safeReadReadings } from "@tapewise/measurement";
import * as statistics from "@tapewise/statistics";
import { chooseLine } from "tapewise/batch";
import { chartSchema, personSchema } from "tapewise/schema";
import { countCalls } from "./count-calls.ts";
import type { Suite } from "./suite.ts";

const readings = { "torso-length": ["43.2 cm", "44 cm", "43.6 cm"], "hip-belt-girth": ["91 cm", "91.5 cm"] };
const personText = JSON.stringify({ id: "p1", measuredBy: "self", tool: "tape", readings });
const sizes = ["XS", "S", "M", "L", "XL", "XXL"].map((size, i) => ({
  size,
  "torso-length": { from: `${34 + 4 * i} cm`, to: `${39 + 4 * i} cm` },
  "hip-belt-girth": { from: `${66 + 6 * i} cm`, to: `${92 + 8 * i} cm` },
}));
const chartText = JSON.stringify({ chart: "Six sizes", harness: "adjustable", sizes });
const chart = parseChart(chartText);

function fromReadings() {
  const estimates = (["torso-length", "hip-belt-girth"] as const).flatMap((dimension) => {
    const read = safeReadReadings(dimension, readings[dimension]);
    if (!read.ok) throw new Error("the readings of the benchmark cannot be read");
    const estimate = safeEstimate({
      dimension,
      readings: read.value,
      conditions: { tool: "tape", measuredBy: "self" },
    });
    return estimate.ok ? [estimate.value] : [];
  });
  return recommend({ estimates }, chart, { unit: "cm" });
}

/** What a call of each distribution function costs, at an argument where the choice makes it. */
const evaluations: Readonly<Record<string, () => number>> = {
  normalCdf: () => statistics.normalCdf(-0.7),
  normalPdf: () => statistics.normalPdf(-0.7),
  normalUpperTail: () => statistics.normalUpperTail(0.7),
  normalQuantile: () => statistics.normalQuantile(0.31),
  normalIntervalProbability: () => statistics.normalIntervalProbability(-1.3, 4.2),
  studentTCdf: () => statistics.studentTCdf(-0.7, 21.5),
  studentTPdf: () => statistics.studentTPdf(-0.7, 21.5),
  studentTUpperTail: () => statistics.studentTUpperTail(0.7, 21.5),
  studentTQuantile: () => statistics.studentTQuantile(0.975, 21.5),
  studentTIntervalProbability: () => statistics.studentTIntervalProbability(-1.3, 4.2, 21.5),
  chiSquareCdf: () => statistics.chiSquareCdf(1.2, 2),
  chiSquareUpperTail: () => statistics.chiSquareUpperTail(1.2, 2),
};

/** The suite of one choice. */
export const recommendSuite: Suite = {
  name: "recommend",
  title: "One choice from raw text, six sizes, two dimensions",
  async prepare() {
    fromReadings();
    const counts = await countCalls(fromReadings, "/packages/statistics/dist/");
    const made = Object.entries(evaluations)
      .map(([name, work]) => ({ name, work, count: counts.get(name) ?? 0 }))
      .filter(({ count }) => count > 0);
    if (made.length === 0)
      throw new Error("no distribution function was seen at work: is the project built?");
    const total = made.reduce((sum, { count }) => sum + count, 0);
    return {
      baseline: "the same distribution functions alone",
      note: `One choice makes ${total} evaluations: ${made.map(({ name, count }) => `${count} ${name}`).join(", ")}.`,
      tasks: [
        {
          name: "the same distribution functions alone",
          work: () => {
            let sum = 0;
            for (const { work, count } of made) for (let i = 0; i < count; i += 1) sum += work();
            return sum;
          },
        },
        { name: "readings as text, chart parsed before: recommend", work: fromReadings },
        {
          name: "one line of batch: JSON to choice, chart parsed before",
          work: () => chooseLine(personText, [chart]),
        },
        {
          name: "everything from text: person and chart",
          work: () => {
            const parsed = safeParseChart(chartText);
            return parsed.ok ? chooseLine(personText, [parsed.value]) : parsed.issues;
          },
        },
        {
          name: "zod alone: JSON.parse and parse of person and chart",
          work: () => [personSchema.parse(JSON.parse(personText)), chartSchema.parse(JSON.parse(chartText))],
        },
        { name: "zod alone: the person", work: () => personSchema.parse(JSON.parse(personText)) },
      ],
    };
  },
};
