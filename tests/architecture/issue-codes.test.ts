import type { Catalogue } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { readWorkspace } from "./workspace.ts";

const packages = readWorkspace().filter((entry) => entry.folder !== "site");

/** The catalogue that a package exports, with the name it exports it by. */
async function catalogueOf(name: string): Promise<readonly (readonly [string, Catalogue])[]> {
  const index: Record<string, unknown> = await import(`../../packages/${name}/src/index.ts`);
  return Object.entries(index).filter(
    (entry): entry is [string, Catalogue] => entry[0].endsWith("Issues") && typeof entry[1] === "object",
  );
}

const catalogues = await Promise.all(
  packages.map(async ({ name }) => ({ name, found: await catalogueOf(name) })),
);
const codes = catalogues.flatMap(({ name, found }) =>
  found.flatMap(([, catalogue]) =>
    Object.entries(catalogue).map(([code, definition]) => ({ name, code, definition })),
  ),
);

test("there are codes to look at", () => {
  expect(codes.length).toBeGreaterThanOrEqual(5);
});

test("a package that declares codes exports them as <package>Issues", () => {
  for (const { name, files } of packages) {
    const declares = files.some((file) => file.path === "src/issues.ts");
    const found = catalogues.find((entry) => entry.name === name)?.found ?? [];
    expect(found.map(([exported]) => exported)).toEqual(declares ? [`${name}Issues`] : []);
  }
});

test("a code means one thing in the whole workspace", () => {
  const owners = new Map<string, readonly string[]>();
  for (const { name, code } of codes) owners.set(code, [...(owners.get(code) ?? []), name]);
  const shared = [...owners].filter(([, names]) => names.length > 1);
  expect(shared.map(([code, names]) => `${code}: ${names.join(", ")}`)).toEqual([]);
});

test("messages and expected forms end without a full stop and hold no broken place", () => {
  const faulty = codes.filter(({ definition }) =>
    [definition.message, definition.expected].some(
      (text) => /[.!\s]$|^\s/.test(text) || /\{[A-Za-z0-9]+(?![A-Za-z0-9}])/.test(text),
    ),
  );
  expect(faulty.map(({ name, code }) => `${name}: ${code}`)).toEqual([]);
});
