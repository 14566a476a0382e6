import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll } from "vitest";
import { startChromium } from "./chromium.ts";
import { dist, type ServedSite, serveSite } from "./serve-site.ts";

/** The path that the tests serve the site under, and that it is built for. */
const base = "/tapewise/";

/** A page under test and everything that it did that it should not. */
export interface Watched {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Messages of the console above "info", errors that nobody caught, and violations of the policy. */
  readonly complaints: readonly string[];
  /** Requests to anywhere but the site, and those that failed. */
  readonly strays: readonly string[];
  /** Every address that was asked for. */
  readonly requests: readonly string[];
  /** The body of each script that came, by address. */
  readonly scripts: ReadonlyMap<string, number>;
}

/** The site and the browser, shared by the tests of one file. */
export interface Harness {
  /** Opens a page of the site; `path` is below the base, such as `choose/`. */
  readonly open: (path: string, options?: OpenOptions) => Promise<Watched>;
  readonly address: (path: string) => string;
}

/** How a page is opened. */
export interface OpenOptions {
  readonly theme?: "light" | "dark";
  readonly width?: number;
  readonly context?: BrowserContextOptions;
  /** Whether to wait until the islands of the page work. */
  readonly isReady?: boolean;
}

/** Prepares the site and the browser for the tests of this file, and clears them away afterwards. */
export function useSite(): Harness {
  let site: ServedSite | undefined;
  let browser: Browser | undefined;
  const contexts: BrowserContext[] = [];

  beforeAll(async () => {
    if (!existsSync(join(dist, "index.html"))) {
      throw new Error(
        "The site is not built. Run: npm run test:site, which builds it for the path that is tested.",
      );
    }
    [site, browser] = await Promise.all([serveSite(base), startChromium()]);
  }, 60_000);

  // Pages that are left open slow down those that follow.
  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
  });

  afterAll(async () => {
    await browser?.close();
    await site?.close();
  });

  const address = (path: string): string => `${site?.address ?? ""}${path}`;
  return {
    address,
    open: async (path, options = {}) => {
      if (browser === undefined || site === undefined) throw new Error("open() before the tests began");
      const { origin } = site;
      const context = await browser.newContext({
        colorScheme: options.theme ?? "light",
        viewport: { width: options.width ?? 1280, height: 900 },
        ...options.context,
      });
      contexts.push(context);
      const complaints: string[] = [];
      const strays: string[] = [];
      const requests: string[] = [];
      const scripts = new Map<string, number>();
      const page = await context.newPage();
      page.setDefaultTimeout(60_000);
      page.on("console", (message) => {
        if (["warning", "error"].includes(message.type()))
          complaints.push(`${message.type()}: ${message.text()}`);
      });
      page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
      context.on("request", (request) => {
        const url = request.url();
        requests.push(url);
        if (!/^(?:data|blob):/.test(url) && new URL(url).origin !== origin) strays.push(url);
      });
      context.on("requestfailed", (request) =>
        strays.push(`${request.url()} ${request.failure()?.errorText}`),
      );
      context.on("response", (response) => {
        if (response.status() >= 400 && !path.includes("no-such-page"))
          strays.push(`${response.url()} ${response.status()}`);
        if (!/\.js$/.test(new URL(response.url()).pathname)) return;
        void response.body().then(
          (body) => scripts.set(response.url(), body.length),
          () => undefined,
        );
      });
      await page.goto(address(path), { waitUntil: "load" });
      if (options.isReady !== false) await ready(page);
      return { page, context, complaints, strays, requests, scripts };
    },
  };
}

/** Waits until every island of the page is hydrated: until then nothing answers to what is typed. */
async function ready(page: Page): Promise<void> {
  const asleep = page.locator("astro-island[ssr]");
  while ((await asleep.count()) > 0) await asleep.first().waitFor({ state: "detached" });
}
