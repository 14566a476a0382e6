// Runs Lighthouse on every working page and on the documentation, of the reference on one page of a kind, and fails
// below the scores that are asked for. Arguments name pages, such as `choose/`; `--all` takes every page there is.
import { createServer } from "node:net";
import lighthouse from "lighthouse";
import { chromium } from "playwright-core";
import { chromiumFlags, chromiumPath } from "../tests/chromium.ts";
import { listPages, listWorkingPages, sampleDocumentation } from "../tests/harness-pages.ts";
import { serveSite } from "../tests/serve-site.ts";
import { buildForTests } from "./run.ts";

/** Least score of each category, out of 100. */
const LEAST: Readonly<Record<string, number>> = {
  performance: 98,
  accessibility: 100,
  "best-practices": 100,
  seo: 100,
};

await buildForTests();
const served = await serveSite("/tapewise/");
const port = await freePort();
const browser = await chromium.launch({
  executablePath: chromiumPath(),
  args: [...chromiumFlags, `--remote-debugging-port=${port}`],
});
const named = process.argv.slice(2).filter((argument) => !argument.startsWith("--"));
const usual = process.argv.includes("--all")
  ? listPages()
  : [...listWorkingPages(), ...sampleDocumentation()];
let failures = 0;
for (const path of named.length > 0 ? named.map((name) => (name === "/" ? "" : name)) : usual) {
  const first = await measure(path);
  const runs = [first];
  // What a page is holds for every run; how fast it was hangs on the machine, so that the median of three counts.
  while (runs.length < 3 && (first.scores.performance ?? 0) < (LEAST.performance ?? 0))
    runs.push(await measure(path));
  const [median = first] = runs
    .toSorted((one, other) => (one.scores.performance ?? 0) - (other.scores.performance ?? 0))
    .slice(Math.floor(runs.length / 2));
  const said = Object.entries(LEAST).map(([category, least]) => {
    const score = median.scores[category] ?? 0;
    if (score >= least) return `${category} ${score}`;
    failures += 1;
    return `${category} ${score} (asked: ${least}; ${median.reasons[category]?.join(", ")})`;
  });
  console.log(`${path === "" ? "/" : path}: ${said.join(", ")}${runs.length > 1 ? " (median of 3)" : ""}`);
}
await browser.close();
await served.close();
process.exitCode = failures === 0 ? 0 : 1;

interface Measured {
  readonly scores: Readonly<Record<string, number>>;
  /** What cost points, by category. */
  readonly reasons: Readonly<Record<string, readonly string[]>>;
}

async function measure(path: string): Promise<Measured> {
  const result = await lighthouse(served.address + path, {
    port,
    output: "json",
    logLevel: "error",
    onlyCategories: Object.keys(LEAST),
    // It is fetched from within the page, and our pages may fetch nothing.
    skipAudits: ["robots-txt"],
  });
  if (result === undefined) throw new Error(`Lighthouse gave no result for ${path}`);
  const { categories, audits } = result.lhr;
  const each = <Value>(of: (category: string) => Value) =>
    Object.fromEntries(Object.keys(LEAST).map((category) => [category, of(category)]));
  return {
    scores: each((category) => Math.round((categories[category]?.score ?? 0) * 100)),
    reasons: each((category) =>
      (categories[category]?.auditRefs ?? [])
        .filter(({ id, weight }) => weight > 0 && (audits[id]?.score ?? 1) < 0.9)
        .map(({ id }) => `${id} ${audits[id]?.displayValue ?? ""}`.trim()),
    ),
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() =>
        typeof address === "object" && address !== null
          ? resolve(address.port)
          : reject(new Error("no port")),
      );
    });
  });
}
