// A million people, drawn from the survey's model, against eight charts: who is served by which of their sizes.
// Beside it as many bare evaluations of Φ as there are ends of ranges to compare with, and the exact shares, which
// need nobody to be drawn.
import { readdirSync, readFileSync } from "node:fs";
import { type SizeChart, safeParseChart } from "@tapewise/charts";
import { chartCoverage } from "@tapewise/coverage";
import { contains } from "@tapewise/intervals";
import { referenceMixture } from "@tapewise/population";
import { createRandom, normalCdf } from "@tapewise/statistics";
import type { Suite } from "./suite.ts";

const PEOPLE = 1_000_000;

function demoCharts(): readonly SizeChart[] {
  const folder = new URL("../packages/tapewise/demo/charts/", import.meta.url);
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const outcome = safeParseChart(readFileSync(new URL(name, folder), "utf8"), { chart: name });
      return outcome.ok ? [outcome.value] : [];
    });
}

/** The suite of shares among people. */
export const coverageSuite: Suite = {
  name: "coverage",
  title: "A million people against the eight charts of the demo, by torso length",
  async prepare() {
    const charts = demoCharts();
    const ranges = charts.map(({ sizes }) =>
      sizes.flatMap(({ ranges }) => ranges["torso-length"]?.interval ?? []),
    );
    const count = ranges.flat().length;
    const people = referenceMixture({ women: 1, men: 1 }).marginal(["torso-length"]);
    const drawn = (): Float64Array => {
      const random = createRandom(1);
      return Float64Array.from({ length: PEOPLE }, () => people.sample(random)[0] ?? 0);
    };
    const torsos = drawn();
    const served = (lengths: Float64Array): readonly number[] => {
      const counts = charts.map(() => 0);
      for (const length of lengths) {
        for (const [place, sizes] of ranges.entries()) {
          if (sizes.some((range) => contains(range, length))) counts[place] = (counts[place] ?? 0) + 1;
        }
      }
      return counts.map((hits) => hits / PEOPLE);
    };
    const exact = (): readonly number[] =>
      charts.map((chart) => {
        const outcome = chartCoverage(chart, people);
        return outcome.ok ? outcome.value.served.share : 0;
      });
    const [shares, truth] = [served(drawn()), exact()];
    const largest = process.resourceUsage().maxRSS / 1024;
    const worst = Math.max(...shares.map((share, place) => Math.abs(share - (truth[place] ?? 0))));
    return {
      baseline: "a million evaluations of Φ",
      note:
        `${charts.length} charts with ${count} ranges. The shares of the people drawn differ from the exact ones by ` +
        `${worst.toPrecision(2)} at most. The lengths of the people take 8 MB; the process with two such lists, engine ` +
        `and charts grew to ${largest.toFixed(0)} MiB before the timing.`,
      tasks: [
        {
          name: "a million evaluations of Φ",
          work: () => {
            let sum = 0;
            for (let k = 0; k < PEOPLE; k += 1) sum += normalCdf(((torsos[k] ?? 0) - 430) / 25);
            return sum;
          },
        },
        { name: "a million people drawn", work: drawn },
        { name: "a million people against eight charts", work: () => served(torsos) },
        { name: "drawn and held against eight charts", work: () => served(drawn()) },
        { name: "eight charts exactly, nobody drawn", work: exact },
      ],
    };
  },
};
