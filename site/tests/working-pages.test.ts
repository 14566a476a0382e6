import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";
import { listWorkingPages } from "./harness-pages.ts";
import { measureTasks } from "./measure-tasks.ts";
import { dist } from "./serve-site.ts";

const site = useSite();
const working = listWorkingPages();

/** Bytes of JavaScript, gzipped, that a working page and its workers may load until an entry is answered. */
const BUDGET = 70_000;
/** The same once a chart was pasted: reading charts, with a sentence for each fault, takes 15 kB. */
const BUDGET_WITH_CHART = 76_000;
/** No task of the page may keep it from answering for longer, in ms, on a processor four times slower. */
const LONGEST_TASK_MS = 50;
const SLOWER = 4;

const FIELDS = "main input[type=text], main textarea";

const CHART =
  "# chart: Doily 45\nsize,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-98\nM,42-48,78-104\n";

/** Unfolds all that is folded, so that every field can be reached. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate("for (const part of document.querySelectorAll('main details')) part.open = true");
}

/** Enters something into the first field, as a reader would, so that workers are there too. */
async function touch(page: Page): Promise<void> {
  await unfold(page);
  const field = page.locator(FIELDS).first();
  if ((await field.count()) === 0) return;
  await field.click();
  await page.keyboard.press("End");
  await page.keyboard.type(" ");
  await page.waitForTimeout(600);
}

/** Pastes a chart, where the page takes one. */
async function paste(page: Page): Promise<void> {
  const field = page.locator("main textarea").first();
  if ((await field.count()) === 0) return;
  await field.fill(CHART);
  await page.waitForTimeout(1000);
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

test.each(working)("%s loads little script, also with a chart", async (path) => {
  const { page, requests } = await site.open(path);
  await touch(page);
  await page.waitForLoadState("networkidle");
  expectWithin(requests, BUDGET);
  await paste(page);
  await page.waitForLoadState("networkidle");
  expectWithin(requests, BUDGET_WITH_CHART);
});

test.each(working)("%s never stops while somebody types, on a slow processor", async (path) => {
  const { page } = await site.open(path);
  await unfold(page);
  const field = page.locator(FIELDS).first();
  if ((await field.count()) === 0) return;
  await field.click();
  await page.keyboard.press("End");
  const tasks = await measureTasks(page, async () => {
    for (const key of ["Backspace", "Backspace", "Backspace", " ", "c", "m"]) {
      await page.keyboard.press(key);
      await page.waitForTimeout(200);
    }
    await page.waitForTimeout(1500);
  });
  expect(tasks.length).toBeGreaterThan(6);
  expect(Math.max(...tasks) * SLOWER).toBeLessThanOrEqual(LONGEST_TASK_MS);
});

test.each(working)("%s fits on a narrow screen and at twice the size", async (path) => {
  const { page } = await site.open(path, { width: 320 });
  for (const { width, size } of [
    { width: 320, size: "100%" },
    { width: 640, size: "200%" },
  ]) {
    await page.setViewportSize({ width, height: 900 });
    await page.evaluate(`document.documentElement.style.fontSize = "${size}"`);
    await page.waitForTimeout(100);
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
