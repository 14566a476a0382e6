// Pictures of the working pages, at three widths and in both themes, into site/screenshots. With `--readme` instead the
// pictures of the English pages that README.md shows, small enough to be kept with the sources, into site/docs.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { startChromium } from "../tests/chromium.ts";
import { listWorkingPages } from "../tests/harness-pages.ts";
import { serveSite } from "../tests/serve-site.ts";
import { buildForTests, site } from "./run.ts";

const WIDTHS: readonly number[] = [320, 768, 1280];

/** A picture that README.md shows: a page with its example of the invented crew, down to the end of a panel. */
interface Kept {
  readonly path: string;
  readonly name: string;
  readonly theme: "light" | "dark";
  /** Panels that end further down, in CSS pixels, are left out whole. */
  readonly most: number;
  /** What is done on the page first. */
  readonly prepare?: (page: Page) => Promise<void>;
}

const KEPT: readonly Kept[] = [
  { path: "choose/", name: "choose", theme: "light", most: 1200 },
  { path: "choose/", name: "choose-dark", theme: "dark", most: 1200 },
  {
    path: "read/",
    name: "read",
    theme: "light",
    most: 2000,
    // The shelf's worst chart is too long for a picture.
    prepare: async (page) => {
      await page.locator("#example").selectOption("marmalade-loom-rolling-pin-60");
      await page.getByRole("heading", { name: "Marmalade Loom Rolling Pin 60" }).first().waitFor();
    },
  },
  { path: "fits/", name: "fits", theme: "light", most: 1400 },
  { path: "hands/", name: "hands", theme: "light", most: 1700 },
  { path: "average/", name: "average", theme: "light", most: 2900 },
  {
    path: "arrives/",
    name: "arrives",
    theme: "light",
    most: 1700,
    prepare: async (page) => {
      for (const answer of ["None of these.", "Its middle lies over the top of the hip bones."]) {
        await page.getByLabel(answer).check();
        await page.getByRole("button", { name: "Next" }).click();
      }
    },
  },
];
const KEPT_WIDTH = 1280;
/** Bytes that the kept pictures may have together. */
const MOST_BYTES = 600_000;

const only = process.argv.slice(2).filter((argument) => !argument.startsWith("--"));
const isWanted = ({ path }: { readonly path: string }): boolean => only.length === 0 || only.includes(path);
const isForReadme = process.argv.includes("--readme");
const folder = join(site, isForReadme ? "docs" : "screenshots");
mkdirSync(folder, { recursive: true });
await buildForTests();
const served = await serveSite("/tapewise/");
const browser = await startChromium();
await (isForReadme ? keepPictures(browser) : takePictures(browser));
await browser.close();
await served.close();
console.log(`Pictures are in ${folder}`);

async function takePictures(browser: Browser): Promise<void> {
  for (const path of listWorkingPages().filter((path) => isWanted({ path }))) {
    const name = path === "" ? "home" : path.replace(/\/$/, "").replaceAll("/", "-");
    for (const colorScheme of ["light", "dark"] as const) {
      for (const width of WIDTHS) {
        const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
        const page = await context.newPage();
        await page.goto(served.address + path, { waitUntil: "networkidle" });
        await page.screenshot({ path: join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: true });
        await context.close();
      }
    }
  }
}

async function keepPictures(browser: Browser): Promise<void> {
  let bytes = 0;
  for (const { path, name, theme, most, prepare } of KEPT.filter(isWanted)) {
    const context = await browser.newContext({
      colorScheme: theme,
      reducedMotion: "reduce",
      viewport: { width: KEPT_WIDTH, height: 900 },
    });
    const page = await context.newPage();
    await page.goto(served.address + path, { waitUntil: "networkidle" });
    await prepare?.(page);
    // What a worker answers has come by then.
    await page.waitForTimeout(2000);
    const height = await page.evaluate<number>(`(() => {
      document.activeElement?.blur();
      document.querySelector(".foot").hidden = true;
      const panels = [...document.querySelectorAll("main .panel, main .note, main details")];
      const isCut = (panel) => panel.getBoundingClientRect().bottom + scrollY > ${most};
      for (const panel of panels) if (isCut(panel)) panel.style.visibility = "hidden";
      const ends = panels.filter((panel) => !isCut(panel)).map((panel) => panel.getBoundingClientRect().bottom + scrollY);
      scrollTo(0, 0);
      return Math.ceil(Math.max(...ends)) + 32;
    })()`);
    await page.setViewportSize({ width: KEPT_WIDTH, height });
    const session = await context.newCDPSession(page);
    const { data } = await session.send("Page.captureScreenshot", { format: "webp", quality: 50 });
    const picture = Buffer.from(data, "base64");
    bytes += picture.length;
    writeFileSync(join(folder, `${name}.webp`), picture);
    console.log(`${name}.webp: ${KEPT_WIDTH} × ${height}, ${picture.length} bytes`);
    await context.close();
  }
  if (bytes > MOST_BYTES) throw new Error(`The pictures have ${bytes} bytes, more than ${MOST_BYTES}.`);
}
