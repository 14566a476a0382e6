import { type LendingPolicy, type LendingTable, lendPacks } from "@tapewise/afterwards";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const policy: LendingPolicy = { goal: "chance", unservedCost: 1 };
const tableOf = (
  chances: readonly (readonly number[])[],
  counts: readonly number[],
  misfitsMm?: readonly (readonly number[])[],
): LendingTable => ({
  members: chances.map((_, i) => `m${i}`),
  shelf: counts.map((count, j) => ({ pack: `p${j}`, count })),
  chances,
  ...(misfitsMm === undefined ? {} : { misfitsMm }),
});
const given = (table: LendingTable, how: LendingPolicy): Readonly<Record<string, string>> =>
  Object.fromEntries(lendPacks(table, how).lent.map(({ member, pack }) => [member, pack]));

describe("lending", () => {
  test("who could take either makes room for who could not", () => {
    // 0.9 + nothing, or 0.8 + 0.7.
    expect(
      given(
        tableOf(
          [
            [0.9, 0.8],
            [0.7, 0],
          ],
          [1, 1],
        ),
        policy,
      ),
    ).toEqual({ m0: "p1", m1: "p0" });
  });

  test("to lend to nobody may be better than to lend badly, if it costs little to go without", () => {
    const table = tableOf([[0.9], [0.2]], [2], [[1], [40]]);
    expect(given(table, { goal: "misfit", unservedCost: 39 })).toEqual({ m0: "p0" });
    expect(given(table, { goal: "misfit", unservedCost: 41 })).toEqual({ m0: "p0", m1: "p0" });
  });

  test("nobody gets a pack below the least chance, nor one that cannot fit", () => {
    const table = tableOf([[0.49], [0.5], [0]], [3]);
    const { lent, without } = lendPacks(table, { ...policy, leastChance: 0.5 });
    expect(lent).toEqual([{ member: "m1", pack: "p0", chance: 0.5 }]);
    expect(without).toEqual([{ member: "m0" }, { member: "m2" }]);
    expect(lendPacks(table, policy).without).toEqual([{ member: "m2" }]);
  });

  test("equals are served in the order of the lists", () => {
    const table = tableOf(Array(4).fill([0.5, 0.5]), [2, 1]);
    const { lent, without } = lendPacks(table, policy);
    expect(lent.map(({ member, pack }) => `${member} ${pack}`)).toEqual(["m0 p0", "m1 p0", "m2 p1"]);
    expect(without).toEqual([{ member: "m3", best: "p0" }]);
  });

  test("what to get next: who goes without is served through others who move", () => {
    // One more p1: m0 moves to it from p0 (0.8 for 0.9), m1 comes in (0.7), and nobody costs 1 any more.
    const { next, left, total } = lendPacks(
      tableOf(
        [
          [0.9, 0.8],
          [0.7, 0],
        ],
        [1, 0],
      ),
      policy,
    );
    expect(total).toBe(0.9);
    expect(left).toEqual([]);
    expect(next).toEqual([
      { pack: "p0", gain: 1.7, serves: "m1" },
      { pack: "p1", gain: 1.6, serves: "m1" },
    ]);
  });

  test("one more of a pack may only give somebody a better one", () => {
    const { next } = lendPacks(tableOf([[0.9, 0.5]], [0, 1]), policy);
    expect(next).toEqual([{ pack: "p0", gain: 0.4 }]);
  });

  test("an empty shelf, no members, and nothing at all", () => {
    expect(lendPacks(tableOf([[]], []), policy)).toEqual({
      lent: [],
      without: [{ member: "m0" }],
      total: 0,
      left: [],
      next: [],
    });
    expect(lendPacks(tableOf([], [2]), policy).left).toEqual([{ pack: "p0", count: 2 }]);
    expect(lendPacks(tableOf([], []), policy).total).toBe(0);
  });

  test("five hundred who are all alike are served in their order, and quickly", () => {
    const table = tableOf(Array(500).fill(Array(20).fill(0.5)), Array(20).fill(20));
    const { lent } = lendPacks(table, policy);
    expect(lent.map(({ member, pack }) => `${member} ${pack}`)).toEqual(
      Array.from({ length: 400 }, (_, i) => `m${i} p${Math.floor(i / 20)}`),
    );
  });
});

describe("what makes no sense is refused", () => {
  const table = tableOf([[0.5]], [1], [[3]]);

  test.each([
    ["two members of a name", { ...table, members: ["a", "a"], chances: [[0.5], [0.5]] }, policy],
    ["a pack without a name", { ...table, shelf: [{ pack: "", count: 1 }] }, policy],
    ["a half pack", tableOf([[0.5]], [0.5]), policy],
    ["fewer than no packs", tableOf([[0.5]], [-1]), policy],
    ["a chance above 1", tableOf([[1.1]], [1]), policy],
    ["a chance that is no number", tableOf([[Number.NaN]], [1]), policy],
    ["a row too few", { ...table, chances: [] }, policy],
    ["a figure too many", tableOf([[0.5, 0.5]], [1]), policy],
    ["no misfits for the misfit", tableOf([[0.5]], [1]), { ...policy, goal: "misfit" as const }],
    [
      "a misfit of more than ten metres",
      tableOf([[0.5]], [1], [[10_001]]),
      { ...policy, goal: "misfit" as const },
    ],
    ["a cost below 0", table, { ...policy, unservedCost: -1 }],
    ["a least chance above 1", table, { ...policy, leastChance: 2 }],
  ])("%s", (_, wrong, how) => {
    expect(() => lendPacks(wrong, how)).toThrow(InvalidArgumentError);
  });
});
