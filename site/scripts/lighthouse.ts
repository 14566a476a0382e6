// Runs Lighthouse on the first page and on every working page, and fails below the scores that are asked for.
import { createServer } from "node:net";
import lighthouse from "lighthouse";
import { chromium } from "playwright-core";
import { chromiumFlags, chromiumPath } from "../tests/chromium.ts";
import { listWorkingPages } from "../tests/harness-pages.ts";
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
let failures = 0;
for (const path of listWorkingPages()) {
  const result = await lighthouse(served.address + path, {
    port,
    output: "json",
    logLevel: "error",
    onlyCategories: Object.keys(LEAST),
    // It is fetched from within the page, and our pages may fetch nothing.
    skipAudits: ["robots-txt"],
  });
  if (result === undefined) throw new Error(`Lighthouse gave no result for ${path}`);
  const scores = Object.entries(LEAST).map(([category, least]) => {
    const score = Math.round((result.lhr.categories[category]?.score ?? 0) * 100);
    if (score >= least) return `${category} ${score}`;
    failures += 1;
    const reasons = result.lhr.categories[category]?.auditRefs
      .filter(({ id, weight }) => weight > 0 && (result.lhr.audits[id]?.score ?? 1) < 0.9)
      .map(({ id }) => `${id} ${result.lhr.audits[id]?.displayValue ?? ""}`.trim());
    return `${category} ${score} (asked: ${least}; ${reasons?.join(", ")})`;
  });
  console.log(`${path === "" ? "/" : path}: ${scores.join(", ")}`);
}
await browser.close();
await served.close();
process.exitCode = failures === 0 ? 0 : 1;

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
