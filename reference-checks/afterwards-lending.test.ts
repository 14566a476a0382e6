// Lending beside packages that solve the same task in other ways: munkres 2.0.4 (Hungarian algorithm) and
// linear-sum-assignment 1.0.9 (shortest augmenting paths), with a column for each single pack, and highs 1.15.3 (HiGHS,
// as a linear programme), with one unknown for each member and pack. Their sums are recomputed at every run.
import { type LendingTable, lendPacks } from "@tapewise/afterwards";
import { createRandom } from "@tapewise/statistics";
import loadHighs from "highs";
import { linearSumAssignment } from "linear-sum-assignment";
import { munkres } from "munkres";
import { describe, expect, test } from "vitest";
import { type Against, against } from "./table/against.ts";

const UNSERVED_COST = 0.5;
/** Ours goes by billionths, of sixty members at most; the others by doubles, and HiGHS by tolerances of 1e-7. */
const TOLERANCE = 1e-6;

/** Chances of an invented crew, in steps of a quarter or in any. */
function tableOf(seed: number): LendingTable {
  const random = createRandom(seed);
  const [members, packs] = [random.integer(1, 60), random.integer(1, 12)];
  const isCoarse = seed % 2 === 0;
  const draw = (): number => (isCoarse ? random.integer(0, 4) / 4 : random.uniform());
  return {
    members: Array.from({ length: members }, (_, i) => `m${i}`),
    shelf: Array.from({ length: packs }, (_, j) => ({ pack: `p${j}`, count: random.integer(0, 6) })),
    chances: Array.from({ length: members }, () => Array.from({ length: packs }, draw)),
  };
}

/** A column for each single pack and one for each member who goes without. */
function columnsOf({ members, shelf, chances }: LendingTable): number[][] {
  const packs = shelf.flatMap(({ count }, j) => Array.from({ length: count }, () => j));
  return chances.map((row) => [
    ...packs.map((j) => (row[j] === 0 ? 1e4 : 1 - (row[j] ?? 0))),
    ...members.map(() => 1 + UNSERVED_COST),
  ]);
}

function programmeOf({ shelf, chances }: LendingTable): string {
  const worth = chances.map((row, i) => [
    `- ${UNSERVED_COST} n${i}`,
    ...row.flatMap((chance, j) => (chance === 0 ? [] : [`+ ${chance} x${i}_${j}`])),
  ]);
  const members = chances.map((row, i) => [
    `n${i}`,
    ...row.flatMap((chance, j) => (chance === 0 ? [] : [`x${i}_${j}`])),
  ]);
  const packs = shelf.flatMap(({ count }, j) => {
    const takers = chances.flatMap((row, i) => (row[j] === 0 ? [] : [`x${i}_${j}`]));
    return takers.length === 0 ? [] : [`${takers.join(" + ")} <= ${count}`];
  });
  const rows = [...members.map((names) => `${names.join(" + ")} = 1`), ...packs];
  return `Maximize\n${worth.flat().join(" ")}\nSubject To\n${rows.join("\n")}\nEnd`;
}

const solver = (source: string): Against =>
  against({
    of: "afterwards.lendPacks",
    source,
    origin: "computed by that package at every run",
    why: "ours goes by billionths of sixty members, the others by doubles and tolerances of 1e-7",
  });

const seeds = Array.from({ length: 24 }, (_, k) => k + 1);
const ours = (table: LendingTable): number => {
  const { total, without } = lendPacks(table, { goal: "chance", unservedCost: UNSERVED_COST });
  return total - UNSERVED_COST * without.length;
};

describe("the worth of the whole", () => {
  test.each(seeds)("is that of the Hungarian algorithm, case %i", (seed) => {
    const table = tableOf(seed);
    const costs = columnsOf(table);
    const cost = munkres(costs).reduce((sum, [i, column]) => sum + (costs[i]?.[column] ?? Number.NaN), 0);
    solver("munkres 2.0.4, Hungarian algorithm").absolute(
      ours(table),
      table.members.length - cost,
      TOLERANCE,
    );
  });

  test.each(seeds)("is that of shortest augmenting paths over single packs, case %i", (seed) => {
    const table = tableOf(seed);
    const costs = columnsOf(table);
    const { rowAssignments } = linearSumAssignment(costs, { maximaze: false });
    const cost = [...rowAssignments].reduce((sum, column, i) => sum + (costs[i]?.[column] ?? Number.NaN), 0);
    solver("linear-sum-assignment 1.0.9, shortest augmenting paths").absolute(
      ours(table),
      table.members.length - cost,
      TOLERANCE,
    );
  });

  test("is that of a linear programme", async () => {
    // Its types are those of the CommonJS build; what is imported here is the other one.
    const highs = await (loadHighs as unknown as typeof loadHighs.default)();
    for (const seed of seeds.slice(0, 8)) {
      const table = tableOf(seed);
      const { Status, ObjectiveValue } = highs.solve(programmeOf(table), { output_flag: false });
      expect(Status).toBe("Optimal");
      solver("HiGHS 1.15.3, linear programme").absolute(ours(table), ObjectiveValue, TOLERANCE);
    }
  });
});

describe("what one more pack brings", () => {
  test("is what HiGHS finds the whole to be worth with it, less what it is worth without", async () => {
    const highs = await (loadHighs as unknown as typeof loadHighs.default)();
    for (const seed of [1, 3, 5]) {
      const table = tableOf(seed);
      const { next } = lendPacks(table, { goal: "chance", unservedCost: UNSERVED_COST });
      const before = highs.solve(programmeOf(table), { output_flag: false }).ObjectiveValue;
      for (const [j, { pack }] of table.shelf.entries()) {
        const shelf = table.shelf.map((one, k) => (k === j ? { ...one, count: one.count + 1 } : one));
        const { ObjectiveValue } = highs.solve(programmeOf({ ...table, shelf }), { output_flag: false });
        const gain = next.find((one) => one.pack === pack)?.gain ?? 0;
        solver("HiGHS 1.15.3, what one more pack brings").absolute(gain, ObjectiveValue - before, TOLERANCE);
      }
    }
  });
});
