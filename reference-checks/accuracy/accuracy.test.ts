import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { errorOf, unitInLastPlace } from "./error.ts";
import { kernels } from "./kernels.ts";
import { measureAccuracy } from "./measure.ts";
import { accuracyPage, accuracyReport } from "./page.ts";
import points from "./points.json" with { type: "json" };

const worst = measureAccuracy();

/** What each is held to on its working domain, in relative error: thirteen digits, and more where more is promised. */
const HELD: Readonly<Record<string, number>> = {
  normalCdf: 1e-14,
  normalUpperTail: 1e-14,
  normalPdf: 1e-14,
  normalQuantile: 2e-15,
  toMillimetres: 2 ** -53,
  fromMillimetres: 2 ** -53,
  "summarise, mean": 1e-15,
  // Both promise as much in their docs: quadrature, and a difference of two tails.
  owensT: 1e-12,
  "skewNormal.cumulative": 1e-10,
};
const THIRTEEN_DIGITS = 1e-13;
const ABSOLUTE: Readonly<Record<string, number>> = { normalBoxProbability: 1e-9 };

describe("on the working domain", () => {
  const near = worst.filter(({ part }) => part === "working domain");

  test("every kernel that there are points for is measured", () => {
    expect(Object.keys(kernels).sort()).toEqual(points.functions.map(({ name }) => name).sort());
    for (const name of Object.keys(kernels)) {
      expect(near.find((one) => one.name === name)?.points, name).toBeGreaterThan(4);
    }
  });

  test.each(near.filter(({ kind }) => kind === "relative"))(
    "$name has thirteen digits and more",
    ({ name, worst: error }) => {
      expect(error.relative, name).toBeLessThanOrEqual(HELD[name] ?? THIRTEEN_DIGITS);
    },
  );

  test.each(near.filter(({ kind }) => kind === "absolute"))(
    "$name is off by no more than it says",
    ({ name, worst: error }) => {
      expect(error.absolute, name).toBeLessThanOrEqual(ABSOLUTE[name] ?? 3e-16);
    },
  );
});

test.each(worst.filter(({ part }) => part === "far tail"))(
  "$name keeps its digits far out",
  ({ worst: error }) => {
    // An exponent of some 700 is rounded to 700 units of 2⁻⁵³, and several times.
    expect(error.relative).toBeLessThanOrEqual(4 * 700 * 2 ** -53);
  },
);

test("both pages have the rows, the domains and the shape that is measured now", () => {
  // The last digits may be those of another engine's `Math`.
  const shape = (text: string): string =>
    text
      .split("\n")
      .map((line) => (line.startsWith("| `") ? line.split(" | ").slice(0, 3).join(" | ") : line))
      .join("\n");
  const site = join(import.meta.dirname, "../../site/src/content/docs/reference/accuracy.md");
  expect(shape(readFileSync(join(import.meta.dirname, "ACCURACY.md"), "utf8"))).toBe(
    shape(accuracyReport(worst)),
  );
  expect(shape(readFileSync(site, "utf8"))).toBe(shape(accuracyPage(worst)));
});

describe("the measure is not blind", () => {
  test("units in the last place are those of doubles", () => {
    expect([unitInLastPlace(1), unitInLastPlace(1.5), unitInLastPlace(0.75), unitInLastPlace(-8)]).toEqual([
      2 ** -52,
      2 ** -52,
      2 ** -53,
      2 ** -49,
    ]);
    expect(unitInLastPlace(1 - 2 ** -53)).toBe(2 ** -53);
    expect(unitInLastPlace(5e-324)).toBe(2 ** -1074);
  });

  test("an error of one unit is one, and a third is off by a fraction of one", () => {
    expect(errorOf(1 + 2 ** -52, "1")).toEqual({ absolute: 2 ** -52, relative: 2 ** -52, ulp: 1 });
    const third = errorOf(1 / 3, "0.3333333333333333333333333");
    // 1/3 in binary ends in …0101|01: the rest is a third of a unit.
    expect(third.ulp).toBeCloseTo(1 / 3, 6);
  });
});
