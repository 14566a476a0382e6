// Pictures of the working pages, at three widths and in both themes, into site/screenshots.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { startChromium } from "../tests/chromium.ts";
import { listWorkingPages } from "../tests/harness-pages.ts";
import { serveSite } from "../tests/serve-site.ts";
import { buildForTests, site } from "./run.ts";

const WIDTHS: readonly number[] = [320, 768, 1280];

const only = process.argv.slice(2);
const folder = join(site, "screenshots");
mkdirSync(folder, { recursive: true });
buildForTests();
const served = await serveSite("/tapewise/");
const browser = await startChromium();
for (const path of listWorkingPages().filter((page) => only.length === 0 || only.includes(page))) {
  for (const colorScheme of ["light", "dark"] as const) {
    for (const width of WIDTHS) {
      const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
      const page = await context.newPage();
      await page.goto(served.address + path, { waitUntil: "networkidle" });
      const name = path === "" ? "home" : path.replace(/\/$/, "").replaceAll("/", "-");
      await page.screenshot({ path: join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: true });
      await context.close();
    }
  }
}
await browser.close();
await served.close();
console.log(`Pictures are in ${folder}`);
