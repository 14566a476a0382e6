import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const PLACES: readonly string[] = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

/** The browser that the tests drive; `CHROMIUM` names another one. */
export function chromiumPath(): string {
  const named = process.env.CHROMIUM;
  const found = named ?? PLACES.find((path) => existsSync(path));
  if (found === undefined || !existsSync(found)) {
    throw new Error(
      `The tests of the site need Chromium, and there is none${named === undefined ? "" : ` at ${named}`}. ` +
        "On Debian: apt-get install -y chromium. Elsewhere, name its path in the environment: CHROMIUM=/path/to/chromium.",
    );
  }
  return found;
}

/** Flags that keep the browser to itself: no updates, no lists to fetch, no crash reports. */
export const chromiumFlags: readonly string[] = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts the browser with a fresh profile. */
export function startChromium(): Promise<Browser> {
  return chromium.launch({ executablePath: chromiumPath(), args: [...chromiumFlags], headless: true });
}
