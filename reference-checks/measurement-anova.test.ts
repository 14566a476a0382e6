import { oneWayAnova } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import anova from "./nist-anova.json" with { type: "json" };

/**
 * NIST StRD, one-way analysis of variance. The log relative error (LRE) is the number of digits that agree,
 * −log₁₀ |ours − theirs| / |theirs|, at most 15.
 *
 * Two targets: the certified value, and what exact arithmetic makes of the same data as doubles. In the harder sets
 * values such as 1000000000000.4 are stored with an error of up to 6e-5, a thousandth of their differences: no program
 * on doubles comes closer to the certified value than that, and the second target shows that nothing more is lost.
 */
type Figures = (typeof anova.sets)[number]["certified"];
const FIGURES = ["betweenSquares", "withinSquares", "f", "rSquared", "residualSd"] as const;

const digits = (actual: number, reference: string): number => {
  const error = Math.abs(actual - Number(reference)) / Math.abs(Number(reference));
  return error === 0 ? 15 : Math.min(15, -Math.log10(error));
};

function groupsOf(set: (typeof anova.sets)[number]): number[][] {
  if (set.data !== undefined) return set.data.map((row) => row.map(Number));
  const { tenths = [], base = "", size = 0 } = set;
  return tenths.map((tenth) => {
    const pair = [Number(`${base}.${tenth - 1}`), Number(`${base}.${tenth + 1}`)];
    return [Number(`${base}.${tenth}`), ...Array.from({ length: (size - 1) / 2 }, () => pair).flat()];
  });
}

function figuresOf(set: (typeof anova.sets)[number]): Record<keyof Figures, number> {
  const { between, within, f = 0, rSquared = 0, residualSd } = oneWayAnova(groupsOf(set));
  return {
    betweenSquares: between.sumOfSquares,
    withinSquares: within.sumOfSquares,
    f,
    rSquared,
    residualSd,
  };
}

/** Digits that the rounding of the data to doubles leaves of the certified values, by set: between, within, F, R², sd. */
const table = anova.sets.map((set) => {
  const ours = figuresOf(set);
  return {
    set,
    certified: FIGURES.map((figure) => digits(ours[figure], set.certified[figure])),
    possible: FIGURES.map((figure) => digits(Number(set.onDoubles[figure]), set.certified[figure])),
    onDoubles: FIGURES.map((figure) => digits(ours[figure], set.onDoubles[figure])),
  };
});

describe.each(table)("$set.name ($set.difficulty)", ({ certified, possible, onDoubles, set }) => {
  test("has the digits that its data, rounded to doubles, can have", () => {
    FIGURES.forEach((figure, i) => {
      const least = Math.min(14, (possible[i] ?? 0) - 0.1);
      expect(certified[i], `${figure} of ${set.name}`).toBeGreaterThanOrEqual(least);
    });
  });

  test("agrees with exact arithmetic on the same doubles to 13 digits", () => {
    FIGURES.forEach((figure, i) => {
      expect(onDoubles[i], `${figure} of ${set.name}`).toBeGreaterThanOrEqual(13);
    });
  });
});

test("sets of lower difficulty have 12 certified digits and more", () => {
  const lower = table.filter(({ set }) => set.difficulty === "lower");
  expect(lower.length).toBe(4);
  for (const { certified } of lower) for (const count of certified) expect(count).toBeGreaterThanOrEqual(12);
});

test("the table of digits", () => {
  const line = (name: string, counts: readonly number[]): string =>
    `${name.padEnd(22)}${counts.map((count) => count.toFixed(1).padStart(8)).join("")}`;
  const text = [
    `${"log relative error".padEnd(22)}${["between", "within", "F", "R2", "sd"].map((h) => h.padStart(8)).join("")}`,
    ...table.flatMap(({ set, certified, possible, onDoubles }) => [
      line(`${set.name}, certified`, certified),
      line("  possible on doubles", possible),
      line("  to exact on doubles", onDoubles),
    ]),
  ].join("\n");
  process.stdout.write(`${text}\n`);
  expect(text.split("\n").length).toBe(1 + 3 * anova.sets.length);
});
