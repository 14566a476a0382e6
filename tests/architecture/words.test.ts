import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { root } from "./workspace.ts";

// Spelt in pieces, so that this file passes its own check.
const FORBIDDEN: readonly (readonly [what: string, pattern: RegExp])[] = [
  ["a path of one machine", /(?<![\w.:/])\/(?:work|tmp|home|root|Users)\//],
  ["a path of one machine", /\b[A-Z]:\\\\?Users\b/],
  ["postponed work", new RegExp(`\\b(?:${["TO", "DO|FIX", "ME|HA", "CK|X", "XX"].join("")})\\b`)],
  [
    "a test that is left out",
    new RegExp(`\\.(?:${["on", "ly|sk", "ip|to", "do|fa", "ils"].join("")})(?:\\.\\w+)?\\(`),
  ],
  ["a type error that is silenced", new RegExp(`@ts-(?:${["ig", "nore|no", "check"].join("")})`)],
  ["a lint rule that is silenced without a reason", /biome-ignore\s+[\w/]+\s*(?::\s*)?(?:\*\/|$)/m],
  ["a merge left half done", /^(?:<{7}|>{7}) /m],
];

/** Folders and files that tools make and git ignores. */
const MADE_BY_TOOLS = /^(?:\.git|node_modules|dist|\.astro|.*\.tsbuildinfo|.*\.tgz)$/;
/** The report of a coverage run; packages/coverage is a package of ours. */
const REPORT = "coverage";

/** Every file of the project that holds text, by its path from the root. */
function listTexts(folder: string): readonly { readonly path: string; readonly text: string }[] {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter(({ name }) => !MADE_BY_TOOLS.test(name) && !(folder === "" && name === REPORT))
    .flatMap((entry) => {
      const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
      if (entry.isDirectory()) return listTexts(path);
      if (!entry.isFile()) return [];
      const text = readFileSync(join(root, path), "utf8");
      return text.includes("\0") ? [] : [{ path, text }];
    });
}

function findForbidden(path: string, text: string): readonly string[] {
  return FORBIDDEN.flatMap(([what, pattern]) => {
    const match = pattern.exec(text);
    if (match === null) return [];
    const line = text.slice(0, match.index).split("\n").length;
    return [`${path}:${line}: ${what}: ${match[0]}`];
  });
}

const texts = listTexts("");

describe("the project's texts", () => {
  test("are found at all, at every level", () => {
    const paths = texts.map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining([
        "package.json",
        "LICENSE",
        ".npmrc",
        "packages/outcome/src/index.ts",
        "tests/architecture/words.test.ts",
      ]),
    );
  });

  test("hold no word that has no place in them", () => {
    expect(texts.flatMap(({ path, text }) => findForbidden(path, text))).toEqual([]);
  });

  test("end with a line end, and lines end without spaces", () => {
    const untidy = texts.filter(
      ({ path, text }) =>
        path !== "package-lock.json" &&
        text !== "" &&
        (!text.endsWith("\n") || (/[ \t]$/m.test(text) && !path.endsWith(".md"))),
    );
    expect(untidy.map(({ path }) => path)).toEqual([]);
  });

  test("the lockfile works behind any registry: it holds hashes and no addresses", () => {
    const lockfile: { packages: Record<string, { resolved?: string; integrity?: string }> } = JSON.parse(
      readFileSync(join(root, "package-lock.json"), "utf8"),
    );
    const entries = Object.values(lockfile.packages);
    expect(entries.filter(({ integrity }) => integrity !== undefined).length).toBeGreaterThan(50);
    expect(entries.filter(({ resolved }) => resolved?.includes("://"))).toEqual([]);
  });
});

describe("the check is not blind", () => {
  test.each([
    ["see /wo", "rk/main/notes"],
    ['"/tm', 'p/out.json"'],
    ["// TO", "DO: later"],
    ["// FIX", "ME"],
    ["test.sk", 'ip("x", f)'],
    ["describe.on", 'ly("x", f)'],
    ["test.only", '.each([1])("x", f)'.replace("only", "")],
    ["it.to", 'do("x")'.replace("(", "(")],
    ["// @ts-ig", "nore"],
    ["// biome-ig", "nore lint/suspicious/noExplicitAny:"],
  ])("%j + %j is caught", (head, tail) => {
    expect(findForbidden("x.ts", `first line\n${head}${tail}`)).toHaveLength(1);
    expect(findForbidden("x.ts", `first line\n${head}${tail}`)[0]).toMatch(/^x\.ts:2: /);
  });

  test.each([
    ["lines.at(-1)"],
    ["https://example.org/work/1"],
    ["../work/x"],
    ["to do so"],
    ["fc.skipped()"],
  ])("%s is let through", (text) => {
    expect(findForbidden("x.ts", text)).toEqual([]);
  });
});
