import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Agreement, digitsOf, mergeAgreements, origins, printedDigits } from "./agreement.ts";
import { differencesFrom, readAgreements } from "./committed.ts";
import { notComputing } from "./not-computing.ts";
import { referencePage, sitePage } from "./page.ts";

const root = join(import.meta.dirname, "../..");
const agreements = readAgreements();
const checked = new Set(agreements.flatMap(({ functions }) => functions));

// Packages whose figures are all those of others: the facade, and what draws or asks another engine.
const WITHOUT_FIGURES: ReadonlySet<string> = new Set(["tapewise", "duckdb", "figures"]);
const packages = readdirSync(join(root, "packages"))
  .filter((name) => !WITHOUT_FIGURES.has(name))
  .filter((name) => existsSync(join(root, "packages", name, "src/index.ts")));

async function functionsOf(name: string): Promise<readonly string[]> {
  const module: Record<string, unknown> = await import(join(root, "packages", name, "src/index.ts"));
  return Object.entries(module).flatMap(([key, value]) => (typeof value === "function" ? [key] : []));
}

describe("every exported function is held against something outside, or computes no figure", () => {
  test("there are packages to ask", () => {
    expect(packages.length).toBeGreaterThan(10);
  });

  test.each(packages)("%s", async (name) => {
    const exported = await functionsOf(name);
    const others = Object.values(notComputing[name] ?? {}).flat();
    const own = exported.filter((each) => checked.has(`${name}.${each}`));
    const neither = exported.filter((each) => !own.includes(each) && !others.includes(each));
    expect(neither, "check them in reference-checks, or say in not-computing.ts why they need none").toEqual(
      [],
    );
    expect(
      others.filter((each) => !exported.includes(each)),
      "no longer exported",
    ).toEqual([]);
    const stale = [...checked]
      .filter((each) => each.startsWith(`${name}.`))
      .filter((each) => !exported.includes(each.slice(name.length + 1)));
    expect(stale, "checked, but not exported").toEqual([]);
  });
});

test("both pages are what the committed figures come to", () => {
  const read = (path: string): string => readFileSync(join(root, path), "utf8");
  expect(read("reference-checks/REFERENCE.md")).toBe(referencePage(agreements));
  expect(read("site/src/content/docs/reference/reference-checks.md")).toBe(sitePage(agreements));
});

test("every row names a source, an origin that there is, and why its tolerance is what it is", () => {
  for (const row of agreements) {
    expect(row.source.length, row.functions.join()).toBeGreaterThan(3);
    expect(row.why.length, row.functions.join()).toBeGreaterThan(3);
    expect(
      origins.some((origin) => row.origin.startsWith(origin)),
      `${row.functions}: ${row.origin}`,
    ).toBe(true);
    expect(row.values).toBeGreaterThan(0);
  }
});

describe("distributions and summaries agree to 13 digits and more on their working domain", () => {
  // Probabilities from 1e-30 on are the working domain. Decimal arguments move a result by more than their function errs; beside doubles these functions have 13 digits too.
  const rows = agreements.filter(
    (row) =>
      row.functions.some((name) => name.startsWith("statistics.")) &&
      row.digits !== undefined &&
      !row.why.startsWith("decimal arguments") &&
      !row.why.startsWith("a far tail") &&
      !row.origin.includes("held against moments of the doubles"),
  );

  test("most functions of statistics are among them", () => {
    expect(new Set(rows.flatMap(({ functions }) => functions)).size).toBeGreaterThan(22);
  });

  test.each(rows)("$functions, $source", ({ digits = 0, functions, source }) => {
    const least = source.startsWith("@stdlib") ? 12.3 : 13;
    expect(digits, functions.join()).toBeGreaterThanOrEqual(least);
  });
});

describe("the table is not blind", () => {
  const row: Agreement = {
    file: "x.test.ts",
    functions: ["statistics.normalCdf"],
    source: "a book",
    origin: "printed",
    why: "roundings",
    values: 2,
    same: 0,
    digits: 14,
    relative: 1e-13,
  };

  test("digits are those that agree", () => {
    expect(digitsOf(1, 1)).toBe(17);
    expect(digitsOf(1.001, 1)).toBeCloseTo(3, 10);
    expect(digitsOf(Number.NaN, 1)).toBe(0);
    expect([printedDigits("0.038"), printedDigits("12.706"), printedDigits("-79.7")]).toEqual([2, 5, 3]);
  });

  test("rows of one source come together at their worst", () => {
    const merged = mergeAgreements([row, { ...row, values: 1, digits: 13, relative: 1e-12 }]);
    expect(merged).toEqual([{ ...row, values: 3, digits: 13, relative: 1e-12 }]);
    expect(mergeAgreements([row, { ...row, source: "another" }])).toHaveLength(2);
  });

  test("a row that is gone, new, or worse is told", () => {
    expect(differencesFrom([row], "x.test.ts", [row])).toEqual([]);
    expect(differencesFrom([row], "x.test.ts", [])).toHaveLength(1);
    expect(differencesFrom([], "x.test.ts", [row])).toHaveLength(1);
    expect(differencesFrom([row], "x.test.ts", [{ ...row, digits: 13 }])).toHaveLength(1);
    expect(differencesFrom([row], "x.test.ts", [{ ...row, values: 1 }])).toHaveLength(1);
    expect(differencesFrom([row], "y.test.ts", [])).toEqual([]);
  });
});
