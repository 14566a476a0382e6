import { oneWayAnova } from "@tapewise/measurement";
import { expect, test } from "vitest";
import anova from "./nist-anova.json" with { type: "json" };
import { against } from "./table/against.ts";

/**
 * NIST StRD, one-way analysis of variance. The log relative error (LRE) is the number of digits that agree,
 * −log₁₀ |ours − theirs| / |theirs|, at most 15.
 *
 * Values such as 1000000000000.4 are stored with an error of up to 6e-5, a thousandth of their differences: arithmetic on
 * the doubles, even exact, comes no closer to the certified values than the second line of each set says. Ours goes by
 * the decimals that were written, and so reaches the digits that are certified in every set.
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

/** Digits of the certified values, by set: between, within, F, R², sd; and those that exact arithmetic on doubles has. */
const table = anova.sets.map((set) => {
  const ours = figuresOf(set);
  return {
    set,
    certified: FIGURES.map((figure) => digits(ours[figure], set.certified[figure])),
    onDoubles: FIGURES.map((figure) => digits(Number(set.onDoubles[figure]), set.certified[figure])),
  };
});

test.each(table)("$set.name ($set.difficulty) has 13 certified digits and more", ({ certified, set }) => {
  FIGURES.forEach((figure, i) => {
    expect(certified[i], `${figure} of ${set.name}`).toBeGreaterThanOrEqual(13);
    against({
      of: "measurement.oneWayAnova",
      source: "NIST StRD, one-way analysis of variance, eleven sets",
      origin: "certified (15 digits)",
      why: "thirteen digits, by the decimals that were written",
    }).relative(figuresOf(set)[figure], set.certified[figure], 1e-13);
  });
});

test("the sets are those of all three difficulties", () => {
  const counts = ["lower", "average", "higher"].map(
    (difficulty) => table.filter(({ set }) => set.difficulty === difficulty).length,
  );
  expect(counts).toEqual([4, 4, 3]);
});

test("the table of digits", () => {
  const line = (name: string, counts: readonly number[]): string =>
    `${name.padEnd(22)}${counts.map((count) => count.toFixed(1).padStart(8)).join("")}`;
  const text = [
    `${"log relative error".padEnd(22)}${["between", "within", "F", "R2", "sd"].map((h) => h.padStart(8)).join("")}`,
    ...table.flatMap(({ set, certified, onDoubles }) => [
      line(`${set.name}, ours`, certified),
      line("  exact on doubles", onDoubles),
    ]),
  ].join("\n");
  process.stdout.write(`${text}\n`);
  expect(text.split("\n").length).toBe(1 + 2 * anova.sets.length);
});
