import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { useSite } from "./harness.ts";
import { listPages, listWorkingPages } from "./harness-pages.ts";
import { measureTasks } from "./measure-tasks.ts";
import { dist } from "./serve-site.ts";

const site = useSite();
const working = listWorkingPages();
// The reference has hundreds of pages from one template: one of a kind stands for them.
const others = listPages().filter((path) => !working.includes(path) && !path.startsWith("api/"));
const reference = listPages().filter((path) => path.startsWith("api/"));
const sample = [
  ...others,
  ...reference.slice(0, 2),
  ...reference.filter((path) => /functions\//.test(path)).slice(0, 1),
];

/** Bytes of JavaScript, gzipped, that a working page may load until it has given an answer. */
const BUDGET = 70_000;
/** No task of the page may keep it from answering for longer, in ms, on a processor four times slower. */
const LONGEST_TASK_MS = 50;
const SLOWER = 4;

test("there are pages to look at", () => {
  expect(working).toContain("choose/");
  expect(working.filter((path) => path.startsWith("de/"))).toHaveLength(working.length / 2);
  expect(others.length).toBeGreaterThan(0);
});

describe.each(["light", "dark"] as const)("in the %s theme", (theme) => {
  test.each([...working, ...sample])("%s has no fault that axe finds, and behaves", async (path) => {
    const { page, complaints, strays } = await site.open(path, { theme });
    // Scripts that load when the browser is idle have come by now, and what they change is looked at too.
    await page.waitForLoadState("networkidle");
    const { violations } = await new AxeBuilder({ page }).analyze();
    const faults = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
    expect(faults).toEqual([]);
    expect(complaints).toEqual([]);
    expect(strays).toEqual([]);
  });
});

test.each([...working, ...sample])("%s has a policy without unsafe scripts, and no cookie", async (path) => {
  const html = readFileSync(join(dist, path, "index.html"), "utf8");
  const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html)?.[1] ?? "";
  const directives = new Map(policy.split("; ").map((part) => [part.split(" ")[0], part]));
  expect(directives.get("default-src")).toBe("default-src 'none'");
  expect(directives.get("script-src")).not.toMatch(/'unsafe-inline'|'unsafe-eval'|https?:/);
  expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.indexOf("<script"));
  if (working.includes(path)) {
    expect(directives.get("connect-src")).toBe("connect-src 'none'");
    expect(directives.get("style-src")).not.toContain("'unsafe-inline'");
  }
  const { context } = await site.open(path);
  expect(await context.cookies()).toEqual([]);
});

test("a script that is put into a page does not run", async () => {
  const { page, complaints } = await site.open("choose/");
  await page.evaluate(
    `{ const script = document.createElement("script"); script.textContent = "globalThis.ran = true"; document.body.append(script); }`,
  );
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(complaints.join("\n")).toContain("Content Security Policy");
});

test("every link leads to a page or a file, with capitals as they are", () => {
  const pages = [...listPages()];
  const broken: string[] = [];
  let count = 0;
  for (const path of pages) {
    const html = readFileSync(join(dist, path, "index.html"), "utf8");
    const text = html.replace(/<script\b[\s\S]*?<\/script>/g, "");
    for (const [, attribute = ""] of text.matchAll(/\s(?:href|src)="([^"]*)"/g)) {
      const address = new URL(attribute.replaceAll("&amp;", "&"), `http://site/tapewise/${path}`);
      // Nothing of the site needs another host; links to one are for the reader, and not for a test.
      if (address.host !== "site") continue;
      count += 1;
      const target = decodeURIComponent(address.pathname);
      const file = target.replace(/^\/tapewise\//, "");
      const isPage = target.startsWith("/tapewise/") && (pages.includes(file) || files.has(file));
      if (!isPage) broken.push(`${path}: ${attribute}`);
      else if (address.hash.length > 1 && pages.includes(file) && !address.hash.startsWith("#v=")) {
        const id = decodeURIComponent(address.hash.slice(1));
        if (!idsOf(file).has(id) && id !== "_top") broken.push(`${path}: ${attribute} (no such place)`);
      }
    }
  }
  expect(broken).toEqual([]);
  expect(count).toBeGreaterThan(100);
});

const known = new Map<string, ReadonlySet<string>>();

function idsOf(path: string): ReadonlySet<string> {
  const found =
    known.get(path) ??
    new Set(
      [...readFileSync(join(dist, path, "index.html"), "utf8").matchAll(/\sid="([^"]*)"/g)].map(
        ([, id = ""]) => id,
      ),
    );
  known.set(path, found);
  return found;
}

const files: ReadonlySet<string> = new Set(
  readdirSync(dist, { recursive: true, encoding: "utf8" }).map((file) => file.replaceAll("\\", "/")),
);

/** Enters something into the first field, as a reader would. */
async function touch(page: Page): Promise<void> {
  const field = page.locator("main input[type=text], main textarea").first();
  if ((await field.count()) === 0) return;
  await field.click();
  await page.keyboard.press("End");
  await page.keyboard.type(" ");
  await page.waitForTimeout(600);
}

test.each(working)("%s loads little script", async (path) => {
  const { page, requests } = await site.open(path);
  // Something is entered, so that workers are there too.
  await touch(page);
  await page.waitForLoadState("networkidle");
  const scripts = [...new Set(requests.filter((address) => new URL(address).pathname.endsWith(".js")))];
  const bytes = scripts.map((address) => {
    const file = new URL(address).pathname.replace(/^\/tapewise\//, "");
    return gzipSync(readFileSync(join(dist, file)), { level: 9 }).length;
  });
  const total = bytes.reduce((sum, size) => sum + size, 0);
  expect(total, scripts.map((address, index) => `${address} ${bytes[index]}`).join("\n")).toBeLessThanOrEqual(
    BUDGET,
  );
});

test.each(working)("%s never stops while somebody types, on a slow processor", async (path) => {
  const { page } = await site.open(path);
  const field = page.locator("main input[type=text], main textarea").first();
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
  for (const width of [320, 640]) {
    const { page } = await site.open(path, { width });
    if (width === 640) await page.evaluate(`document.documentElement.style.fontSize = "200%"`);
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
