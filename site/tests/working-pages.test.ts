import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";
import { listWorkingPages } from "./harness-pages.ts";
import { medianLongest, settled } from "./measure-tasks.ts";
import { dist } from "./serve-site.ts";

const site = useSite();
const working = listWorkingPages();
/** The pages with a form, in one language: in the other they load the same scripts. */
const forms = ["choose/", "read/", "average/", "fits/", "hands/", "arrives/"];

/** Bytes of JavaScript, gzipped, that a working page and its workers may load, also for a chart that is pasted. */
const BUDGET = 70_000;
/** A chart in JSON takes a parser of JSON too, that knows the line of each fault. */
const BUDGET_WITH_JSON = 80_000;
/** No task of the page may keep it from answering for longer, in ms, on a processor four times slower. */
const LONGEST_TASK_MS = 50;

const FIELDS = "main input[type=text], main textarea";

const TABLE =
  "# chart: Doily 45\nsize,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-98\nM,42-48,78-104\n";
const JSON_CHART = JSON.stringify({
  chart: "Doily 45",
  sizes: [
    { size: "S", "torso-length": { from: "38 cm", to: "43 cm" } },
    { size: "M", "torso-length": { from: "42 cm", to: "48 cm" } },
  ],
});

/** Unfolds all that is folded, so that every field can be reached. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate("for (const part of document.querySelectorAll('main details')) part.open = true");
}

/** Enters something into the first field, as a reader would, so that workers are there too. */
async function touch(page: Page): Promise<void> {
  await unfold(page);
  await page.locator(FIELDS).first().click();
  await page.keyboard.press("End");
  await page.keyboard.type(" ");
  await settled(page);
}

/** Pastes a chart where the page takes one, and waits until what reads it was loaded and has read it. */
async function paste(page: Page, text: string, requests: readonly string[]): Promise<boolean> {
  const shelf = page.locator("#pack");
  if ((await shelf.count()) > 0) await shelf.selectOption("");
  const field = page.locator("#pasted, #chart-text").first();
  if ((await field.count()) === 0) return false;
  await field.fill(text);
  const reader = text === JSON_CHART ? /\/chart-from-json/ : /\/chart-/;
  await expect.poll(() => requests.some((address) => reader.test(address)), { timeout: 30_000 }).toBe(true);
  await settled(page);
  return true;
}

/** The scripts among what was asked for, each with its bytes. */
function weigh(requests: readonly string[]): ReadonlyMap<string, number> {
  const scripts = [...new Set(requests)].filter((address) => new URL(address).pathname.endsWith(".js"));
  return new Map(
    scripts.map((address) => {
      const file = new URL(address).pathname.replace(/^\/tapewise\//, "");
      return [file, gzipSync(readFileSync(join(dist, file)), { level: 9 }).length];
    }),
  );
}

function expectWithin(requests: readonly string[], budget: number): void {
  const weights = weigh(requests);
  const total = [...weights.values()].reduce((sum, size) => sum + size, 0);
  expect(total, [...weights].map(([file, size]) => `${file} ${size}`).join("\n")).toBeLessThanOrEqual(budget);
}

test("the pages with a form are all the working pages but the first", () => {
  expect(working.filter((path) => path !== "" && !path.startsWith("de/"))).toEqual(forms);
});

test.each(forms)("%s loads little script, also when a chart is pasted", async (path) => {
  const { page, requests } = await site.open(path);
  await touch(page);
  await paste(page, TABLE, requests);
  expect(weigh(requests).size).toBeGreaterThan(4);
  expectWithin(requests, BUDGET);
  if (await paste(page, JSON_CHART, requests)) expectWithin(requests, BUDGET_WITH_JSON);
});

test.each(forms)("%s loads the same scripts in German", (path) => {
  const scriptsOf = (file: string) =>
    [...new Set(readFileSync(join(dist, file, "index.html"), "utf8").match(/_astro\/[\w.-]+\.js/g))].sort();
  expect(scriptsOf(`de/${path}`)).toEqual(scriptsOf(path));
  expect(scriptsOf(path).length).toBeGreaterThan(1);
});

test.each(forms)("%s never stops while somebody types, on a slow processor", async (path) => {
  const longest = await medianLongest(
    LONGEST_TASK_MS,
    async () => {
      const { page } = await site.open(path);
      await unfold(page);
      await page.locator(FIELDS).first().click();
      await page.keyboard.press("End");
      await settled(page);
      return page;
    },
    async (page) => {
      for (const key of ["Backspace", "Backspace", "Backspace", " ", "c", "m"]) {
        await page.keyboard.press(key);
        await settled(page);
      }
    },
  );
  expect(longest).toBeLessThanOrEqual(LONGEST_TASK_MS);
});

test.each(forms)("%s takes markup in every field for text", async (path) => {
  const { page, complaints, strays } = await site.open(path);
  await unfold(page);
  const before = await page.locator("main img, main script").count();
  const fields = page.locator(FIELDS);
  for (let index = 0; index < (await fields.count()); index += 1) {
    const field = fields.nth(index);
    if (!(await field.isEditable())) continue;
    await field.fill("<img src=x onerror=globalThis.ran=1><script>globalThis.ran=1</script> cm");
  }
  await settled(page);
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(await page.locator("main img, main script").count()).toBe(before);
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test.each(forms)("%s goes on without a network once it has answered", async (path) => {
  const { page, context, complaints, strays } = await site.open(path);
  await touch(page);
  // The browser asks for the sign of its tab again whenever the address changes; that is no doing of the page.
  await context.route("**/favicon.svg", (route) =>
    route.fulfill({ contentType: "image/svg+xml", body: '<svg xmlns="http://www.w3.org/2000/svg"/>' }),
  );
  await context.setOffline(true);
  await page.keyboard.press("Backspace");
  await settled(page);
  expect(await page.locator("main .note.error").count()).toBe(0);
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test.each(working)("%s fits on a narrow screen and at twice the size", async (path) => {
  const { page } = await site.open(path, { width: 320 });
  for (const { width, size } of [
    { width: 320, size: "100%" },
    { width: 640, size: "200%" },
  ]) {
    await page.setViewportSize({ width, height: 900 });
    await page.evaluate(`document.documentElement.style.fontSize = "${size}"`);
    await page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
    const [scrolled, seen]: [number, number] = await page.evaluate(
      "[document.documentElement.scrollWidth, document.documentElement.clientWidth]",
    );
    expect(scrolled, `${width} px`).toBeLessThanOrEqual(seen);
  }
});

test.each(working)("%s says something without scripts", async (path) => {
  const { page } = await site.open(path, { context: { javaScriptEnabled: false }, isReady: false });
  expect(await page.locator("main h1").count()).toBe(1);
  const words = await page.evaluate<string>("document.querySelector('main').innerText");
  expect(words.length).toBeGreaterThan(300);
});
