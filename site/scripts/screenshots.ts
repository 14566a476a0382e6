// Pictures of the working pages, at three widths and in both themes, into site/screenshots. With `--readme`
// also the first screen of each English page, small enough to be kept with the sources, into site/docs.
import { mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { startChromium } from "../tests/chromium.ts";
import { listWorkingPages } from "../tests/harness-pages.ts";
import { serveSite } from "../tests/serve-site.ts";
import { buildForTests, site } from "./run.ts";

const WIDTHS: readonly number[] = [320, 768, 1280];
/** Bytes that one of the pictures which are kept may have. */
const MOST_BYTES = 120_000;

const only = process.argv.slice(2).filter((argument) => !argument.startsWith("--"));
const isForReadme = process.argv.includes("--readme");
const folder = join(site, "screenshots");
const kept = join(site, "docs");
mkdirSync(folder, { recursive: true });
if (isForReadme) mkdirSync(kept, { recursive: true });
await buildForTests();
const served = await serveSite("/tapewise/");
const browser = await startChromium();
for (const path of listWorkingPages().filter((page) => only.length === 0 || only.includes(page))) {
  const name = path === "" ? "home" : path.replace(/\/$/, "").replaceAll("/", "-");
  for (const colorScheme of ["light", "dark"] as const) {
    for (const width of WIDTHS) {
      const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
      const page = await context.newPage();
      await page.goto(served.address + path, { waitUntil: "networkidle" });
      await page.screenshot({ path: join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: true });
      if (isForReadme && width === 1280 && !path.startsWith("de/")) {
        const file = join(kept, `${name}-${colorScheme}.png`);
        await page.screenshot({ path: file, animations: "disabled" });
        const { size } = statSync(file);
        if (size > MOST_BYTES) throw new Error(`${file} has ${size} bytes, more than ${MOST_BYTES}.`);
      }
      await context.close();
    }
  }
}
await browser.close();
await served.close();
console.log(`Pictures are in ${folder}${isForReadme ? ` and ${kept}` : ""}`);
