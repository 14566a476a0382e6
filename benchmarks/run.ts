// Runs every suite, or those that are named, and writes what they give into benchmarks/RESULTS.md; what was not run stays
// there as it was. Times differ from machine to machine; the ratios within one table are what counts.
import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { cpus, loadavg, totalmem } from "node:os";
import { fileURLToPath } from "node:url";
import { batchCommandSuite, batchLinesSuite } from "./batch.ts";
import { chartsSuite } from "./charts.ts";
import { columnsGrowthSuite, columnsLibrariesSuite, columnsSuite } from "./columns.ts";
import { coverageSuite } from "./coverage.ts";
import { cutsSuite } from "./cuts.ts";
import { evidenceSuite } from "./evidence.ts";
import { tableOf } from "./growth.ts";
import { lendingSuite } from "./lending.ts";
import { measure } from "./measure.ts";
import { outcomeLogSuite } from "./outcome-log.ts";
import { recommendSuite } from "./recommend.ts";
import type { Suite } from "./suite.ts";
import { unitsSuite } from "./units.ts";

const suites: readonly Suite[] = [
  recommendSuite,
  columnsSuite,
  columnsLibrariesSuite,
  columnsGrowthSuite,
  batchLinesSuite,
  batchCommandSuite,
  unitsSuite,
  chartsSuite,
  coverageSuite,
  cutsSuite,
  lendingSuite,
  outcomeLogSuite,
  evidenceSuite,
];

async function report(suite: Suite): Promise<string> {
  const { baseline, note, tasks } = await suite.prepare();
  const heading = `## ${suite.title}`;
  if (tasks.length === 0) return [heading, note, machine()].join("\n\n");
  const timings = await measure(tasks);
  const base = timings.find(({ name }) => name === baseline)?.medianMicroseconds;
  if (base === undefined) throw new Error(`no task is called ${baseline}`);
  const rows = timings.map(({ name, medianMicroseconds, marginPercent }) => [
    name,
    figureOf(medianMicroseconds / base),
    figureOf(medianMicroseconds),
    marginPercent.toFixed(1),
  ]);
  return [heading, tableOf(["task", "ratio", "median, µs", "margin, %"], rows), note, machine()].join("\n\n");
}

/** Three digits, and no power of ten. */
function figureOf(value: number): string {
  return value < 1000 ? value.toPrecision(3) : String(Number(value.toPrecision(3)));
}

function commit(): string {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
}

function machine(): string {
  const processors = cpus();
  const memory = (totalmem() / 2 ** 30).toFixed(0);
  return (
    `${processors.length} × ${processors[0]?.model ?? "unknown processor"}, ${memory} GiB; Node ${process.version}; ` +
    `commit ${commit()}. Load of the machine at the end: ${loadavg()[0]?.toFixed(1)}.`
  );
}

const names = [...new Set(suites.map(({ name }) => name))];
const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !names.includes(name));
if (unknown.length > 0)
  throw new Error(`no suite is called ${unknown.join(" or ")}, only ${names.join(", ")}`);

const file = new URL("RESULTS.md", import.meta.url);
const sections = new Map<string, string>();
for (const section of readFileSync(file, "utf8").split(/^(?=## )/m)) {
  sections.set(section.split("\n")[0] ?? "", section.trim());
}
for (const suite of suites) {
  if (wanted.length > 0 && !wanted.includes(suite.name)) continue;
  const section = await report(suite);
  process.stdout.write(`${section}\n\n`);
  sections.set(`## ${suite.title}`, section);
}
const text = [
  "# Results of the benchmarks",
  "Written by `npm run bench`; the tasks of one table ran side by side.",
  ...suites.flatMap(({ title }) => sections.get(`## ${title}`) ?? []),
];
writeFileSync(file, `${text.join("\n\n")}\n`);
// The site shows them.
const write = fileURLToPath(new URL("../tests/docs/site-write.ts", import.meta.url));
execFileSync(process.execPath, ["--conditions=@tapewise/source", write, "what-it-costs"]);
