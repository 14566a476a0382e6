// Runs every suite and writes benchmarks/RESULTS.md. Times differ from machine to machine; the ratios
// within one run are what counts.
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { batchSuite } from "./batch.ts";
import { chartsSuite } from "./charts.ts";
import { columnsSuite } from "./columns.ts";
import { coverageSuite } from "./coverage.ts";
import { evidenceSuite } from "./evidence.ts";
import { lendingSuite } from "./lending.ts";
import { measure } from "./measure.ts";
import { outcomeLogSuite } from "./outcome-log.ts";
import { recommendSuite } from "./recommend.ts";
import type { Suite } from "./suite.ts";
import { unitsSuite } from "./units.ts";

const suites: readonly Suite[] = [
  recommendSuite,
  columnsSuite,
  batchSuite,
  unitsSuite,
  chartsSuite,
  coverageSuite,
  lendingSuite,
  outcomeLogSuite,
  evidenceSuite,
];

async function report(suite: Suite): Promise<string> {
  const { baseline, note, tasks } = await suite.prepare();
  const timings = await measure(tasks);
  const base = timings.find(({ name }) => name === baseline)?.medianMicroseconds;
  if (base === undefined) throw new Error(`no task is called ${baseline}`);
  const rows = timings.map(
    ({ name, medianMicroseconds, marginPercent }) =>
      `| ${name} | ${(medianMicroseconds / base).toPrecision(3)} | ${medianMicroseconds.toPrecision(3)} | ${marginPercent.toFixed(1)} |`,
  );
  return [
    `## ${suite.title}`,
    "",
    "| task | ratio | median, µs | margin, % |",
    "| --- | ---: | ---: | ---: |",
    ...rows,
    "",
    note,
  ].join("\n");
}

function commit(): string {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
}

const sections: string[] = [];
for (const suite of suites) sections.push(await report(suite));
const processors = cpus();
const text = [
  "# Results of the benchmarks",
  "",
  "Written by `npm run bench`; the tasks of one table ran side by side.",
  "",
  `Machine: ${processors.length} × ${processors[0]?.model ?? "unknown processor"}; Node ${process.version}; commit ${commit()}. Load at the end: ${loadavg()[0]?.toFixed(1)}.`,
  "",
  ...sections.flatMap((section) => [section, ""]),
].join("\n");
writeFileSync(new URL("RESULTS.md", import.meta.url), text);
process.stdout.write(text);
