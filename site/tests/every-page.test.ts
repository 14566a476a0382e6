import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";
import { listPages, listWorkingPages, sampleDocumentation } from "./harness-pages.ts";
import { lookAt } from "./look-at.ts";
import { dist } from "./serve-site.ts";

const site = useSite();
const working = listWorkingPages();
const sample = sampleDocumentation();

test("there are pages to look at", () => {
  expect(working).toContain("choose/");
  expect(working.filter((path) => path.startsWith("de/"))).toHaveLength(working.length / 2);
  expect(sample.length).toBeGreaterThan(10);
});

test.each(working)("%s has no fault that axe finds in either theme, and behaves", (path) =>
  lookAt(site, path),
);

test.each([...working, ...sample])("%s has a policy without unsafe scripts", (path) => {
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
