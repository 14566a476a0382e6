import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { chromium } from "playwright-core";

const TYPES: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript" };

/** What a built page and its worker tell the server when a browser opens it, and what went wrong there. */
export interface Told {
  readonly answers: Readonly<Record<string, string>>;
  readonly faults: readonly string[];
}

/** Serves a folder, opens its page in Chromium and waits for what page and worker answer. */
export async function openPage(folder: string): Promise<Told> {
  const answers: Record<string, string> = {};
  const faults: string[] = [];
  const server = createServer((request, response) => {
    const url = request.url ?? "/";
    if (request.method === "POST") {
      let body = "";
      request.on("data", (piece) => {
        body += piece;
      });
      request.on("end", () => {
        answers[url.replace("/answer/", "")] = body;
        response.end();
      });
      return;
    }
    // A bundler that leaves the worker's own name in place has built it as JavaScript.
    const path = join(folder, url === "/" ? "index.html" : url.replace(/\.ts$/, ".js"));
    if (!existsSync(path)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "content-type": TYPES[extname(path)] ?? "application/octet-stream" });
    response.end(readFileSync(path));
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", () => done()));
  const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const page = await browser.newPage();
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    const end = Date.now() + 20_000;
    while (Object.keys(answers).length < 2 && faults.length === 0 && Date.now() < end) {
      await new Promise((done) => setTimeout(done, 50));
    }
  } finally {
    await browser.close();
    server.close();
  }
  return { answers, faults };
}
