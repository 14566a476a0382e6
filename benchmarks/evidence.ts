// A hundred thousand outcomes taken in, one by one, beside the bare parse of the lines that they stand in, and the
// question what they say of one product.
import { createEvidence, learnProduct, type OutcomeRow, safeSeeOutcome } from "@tapewise/afterwards";
import { parseChart } from "@tapewise/charts";
import { createRandom } from "@tapewise/statistics";
import type { Suite } from "./suite.ts";

const OUTCOMES = 100_000;

/** The suite of learning from outcomes. */
export const evidenceSuite: Suite = {
  name: "evidence",
  title: "A hundred thousand outcomes of eight products as evidence",
  async prepare() {
    const random = createRandom(1);
    const charts = Array.from({ length: 8 }, (_, i) =>
      parseChart("size,torso-length (cm)\nS,38-43\nM,42-47\nL,46-51\n", {
        chart: `Accordion ${i}`,
        maker: "Gingham Clockwork",
      }),
    );
    const byName = new Map(charts.map((chart) => [chart.chart, chart]));
    const lines = Array.from({ length: OUTCOMES }, (_, i): string => {
      const isKept = random.uniform() < 0.8;
      const row: OutcomeRow = {
        v: 1,
        id: `row-${i}`,
        at: "2026-05-04",
        person: `member-${i % 977}`,
        product: { maker: "Gingham Clockwork", chart: `Accordion ${random.integer(0, 7)}` },
        size: ["S", "M", "L"][random.integer(0, 2)] ?? "M",
        outcome: isKept ? "kept" : "exchanged",
        ...(isKept ? {} : { reason: random.uniform() < 0.5 ? "harness-too-long" : "harness-too-short" }),
        estimates: {
          "torso-length": { mm: 380 + 130 * random.uniform(), uncertaintyMm: 8.2, degreesOfFreedom: 21 },
        },
      };
      return JSON.stringify(row);
    });
    const rows = lines.map((line): OutcomeRow => JSON.parse(line));
    const takeIn = (list: readonly OutcomeRow[]) => {
      const evidence = createEvidence();
      for (const row of list) {
        const chart = byName.get(row.product.chart);
        const seen = chart === undefined ? undefined : safeSeeOutcome(row, chart);
        if (seen?.ok !== true) throw new Error(`nothing can be seen of ${row.product.chart}`);
        for (const one of seen.value) evidence.add(one);
      }
      return evidence;
    };
    const evidence = takeIn(rows);
    const key = { maker: "Gingham Clockwork", product: "Accordion 0" };
    return {
      baseline: "the lines, parsed as JSON",
      note:
        `${OUTCOMES} lines of ${Math.round((lines.join("").length / OUTCOMES) * 10) / 10} characters on average. Each outcome adds the ` +
        "logarithm of its likelihood at 319 nodes of offset and width; the rows are parsed beforehand in the second task.",
      tasks: [
        { name: "the lines, parsed as JSON", work: () => lines.map((line) => JSON.parse(line)).length },
        { name: "the rows, taken in as evidence", work: () => takeIn(rows) },
        {
          name: "what is known of one of the eight products",
          work: () => learnProduct(evidence, key, "torso-length"),
        },
      ],
    };
  },
};
