/**
 * After the build: lets the keyboard reach code and tables that scroll, and gives every page a content security policy of its own, with the hashes of exactly the
 * scripts and styles that stand in it. Working pages may connect to nothing at all; pages with the search may
 * fetch its index from where they came from, and run its WebAssembly.
 */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const dist: string = fileURLToPath(new URL("../dist", import.meta.url));

function hash(text: string): string {
  return `'sha256-${createHash("sha256").update(text, "utf8").digest("base64")}'`;
}

function hashesOf(html: string, element: "script" | "style"): readonly string[] {
  const pattern = new RegExp(`<${element}\\b([^>]*)>([\\s\\S]*?)</${element}>`, "g");
  const found = [...html.matchAll(pattern)].filter(
    ([, attributes = "", text = ""]) => !/\bsrc=/.test(attributes) && text !== "",
  );
  return [...new Set(found.map(([, , text = ""]) => hash(text)))];
}

/** The policy of one page. */
export function policyFor(html: string): string {
  const hasSearch = html.includes("<site-search");
  // The frame of the documentation sets styles on elements; working pages do not, and need no exception.
  const hasInlineStyles = /<[^>]+\sstyle=/.test(html.replace(/<script\b[\s\S]*?<\/script>/g, ""));
  const directives = {
    "default-src": ["'none'"],
    "script-src": ["'self'", ...hashesOf(html, "script"), ...(hasSearch ? ["'wasm-unsafe-eval'"] : [])],
    "style-src": ["'self'", ...(hasInlineStyles ? ["'unsafe-inline'"] : hashesOf(html, "style"))],
    "img-src": ["'self'", "data:"],
    "font-src": ["'self'"],
    "connect-src": [hasSearch ? "'self'" : "'none'"],
    "worker-src": ["'self'"],
    "form-action": ["'none'"],
    "base-uri": ["'none'"],
  };
  return Object.entries(directives)
    .map(([name, values]) => `${name} ${values.join(" ")}`)
    .join("; ");
}

const files = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith(".html"),
);
if (files.length === 0) throw new Error(`There is no page in ${dist}: was the site built?`);
for (const file of files) {
  const path = join(dist, file);
  // What is wider than the screen scrolls, and so must be reached by keyboard, also before a script says so.
  const written = readFileSync(path, "utf8");
  const scrolling = written.replaceAll("<pre data-language", '<pre tabindex="0" role="group" data-language');
  // Tables of the documentation scroll too; those of working pages do not.
  const html = written.includes("sl-markdown-content")
    ? scrolling.replaceAll("<table>", '<table tabindex="0">')
    : scrolling;
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policyFor(html)}">`;
  // It stands before the first script and style, because it rules what follows it.
  const secured = html.replace(/<head[^>]*>(?:\s*<meta charset="[^"]*"\s*\/?>)?/, (head) => `${head}${meta}`);
  if (secured === html) throw new Error(`${file} has no head to put its policy in.`);
  writeFileSync(path, secured);
}
console.log(`${files.length} pages, each with a policy of its own.`);
