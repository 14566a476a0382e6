// Packs of which there are few, lent so that the whole fits best: our own solver beside packages that solve the same
// task. Those for assignment get a column for each single pack and for each way to go without; the one for linear
// programmes gets a text in the LP format. All come to the same sum, which is checked before the timing.
import { type LendingTable, lendPacks } from "@tapewise/afterwards";
import { holdAgainst } from "@tapewise/fit";
import { interval } from "@tapewise/intervals";
import { createRandom } from "@tapewise/statistics";
import loadHighs from "highs";
import { linearSumAssignment } from "linear-sum-assignment";
import { munkres } from "munkres";
import { growthPower, timeSizes } from "./growth.ts";
import type { Suite } from "./suite.ts";

const policy = { goal: "chance", unservedCost: 0.5, leastChance: 0.1 } as const;
/** Members and packs, always ten to one, that are held beside each other. */
const BESIDE = [250, 25] as const;
const GROWING = [100, 200, 500, 1000, 2000];
const MEMBERS_TO_A_PACK = 10;
const ROUNDS = 3;

/** An invented crew and a shelf with four packs for five members, in sizes drawn at random. */
function crewOf(members: number, packs: number): LendingTable {
  const random = createRandom(members);
  const counts = Array.from({ length: packs }, () => 0);
  for (let k = 0; k < 0.8 * members; k += 1) {
    const place = random.integer(0, packs - 1);
    counts[place] = (counts[place] ?? 0) + 1;
  }
  const ranges = counts.map((_, j) => {
    const from = 340 + (160 * j) / packs + 10 * random.uniform();
    return interval(from, from + 50);
  });
  return {
    members: Array.from({ length: members }, (_, i) => `member ${i}`),
    shelf: counts.map((count, j) => ({ pack: `pack ${j}`, count })),
    chances: Array.from({ length: members }, () => {
      const meanMm = 430 + 25 * random.normal();
      const torso = { meanMm, sdMm: 8, degreesOfFreedom: Number.POSITIVE_INFINITY };
      return ranges.map((range) => holdAgainst(torso, range).inside);
    }),
  };
}

/** Costs with a column for each single pack, and one for each member who goes without. */
function columnsOf({ members, shelf, chances }: LendingTable): number[][] {
  const packs = shelf.flatMap(({ count }, j) => Array.from({ length: count }, () => j));
  return chances.map((row) => [
    ...packs.map((j) => {
      const chance = row[j] ?? 0;
      return chance < policy.leastChance ? 1e6 : 1 - chance;
    }),
    ...members.map(() => 1 + policy.unservedCost),
  ]);
}

function linearProgramme({ shelf, chances }: LendingTable): string {
  const worth: string[] = [];
  const ofPack: string[][] = shelf.map(() => []);
  const ofMember = chances.map((row, i) => {
    worth.push(`- ${policy.unservedCost} none${i}`);
    const own = row.flatMap((chance, j) => {
      if (chance < policy.leastChance) return [];
      worth.push(`+ ${chance.toFixed(9)} x${i}_${j}`);
      ofPack[j]?.push(`x${i}_${j}`);
      return [`x${i}_${j}`];
    });
    return `${[...own, `none${i}`].join(" + ")} = 1`;
  });
  const ofPacks = shelf.flatMap(({ count }, j) =>
    ofPack[j]?.length === 0 ? [] : [`${ofPack[j]?.join(" + ")} <= ${count}`],
  );
  return `Maximize\n${worth.join(" ")}\nSubject To\n${[...ofMember, ...ofPacks].join("\n")}\nEnd`;
}

const worthOf = (table: LendingTable): number => {
  const { total, without } = lendPacks(table, policy);
  return total - policy.unservedCost * without.length;
};

/** The worth of an assignment of members to columns, from the sum of its costs. */
const worthFrom = (costs: readonly (readonly number[])[], columns: Iterable<number>): number =>
  [...columns].reduce((sum, column, i) => sum + 1 - (costs[i]?.[column] ?? 0), 0);

/** The suite of lending. */
export const lendingSuite: Suite = {
  name: "lending",
  title: `${BESIDE[0]} members, ${BESIDE[1]} packs of which there are few`,
  async prepare() {
    const table = crewOf(...BESIDE);
    const costs = columnsOf(table);
    const programme = linearProgramme(table);
    // Its types are those of the CommonJS build; what is imported here is the other one.
    const highs = await (loadHighs as unknown as typeof loadHighs.default)();
    const byPairs = (): readonly number[] => {
      const columns: number[] = [];
      for (const [i, column] of munkres(costs)) columns[i] = column;
      return columns;
    };
    const byRows = () => linearSumAssignment(costs, { maximaze: false }).rowAssignments;
    const byProgramme = () => highs.solve(programme, { output_flag: false }).ObjectiveValue;
    const sums = [worthFrom(costs, byPairs()), worthFrom(costs, byRows()), byProgramme()];
    const own = worthOf(table);
    // Ours goes by billionths; the others by doubles.
    if (!sums.every((sum) => Math.abs(sum - own) < 1e-6))
      throw new Error(`${own} and ${sums.join(", ")} differ`);
    const grown = timeSizes(
      GROWING.map((members) => {
        const larger = crewOf(members, members / MEMBERS_TO_A_PACK);
        const count = Math.max(1, Math.round(500 / members));
        const repeat = (): number => {
          for (let k = 0; k < count; k += 1) lendPacks(larger, policy);
          return count;
        };
        return { size: members, repeat };
      }),
      ROUNDS,
    );
    return {
      baseline: "lendPacks",
      note:
        `Other crews, with ${MEMBERS_TO_A_PACK} members to a pack, in ms of a processor: ${grown.map(({ size, ms }) => `${size} members ${ms.toPrecision(3)}`).join(", ")}; ` +
        `time grows with the number of members to the power of ${growthPower(grown)} (slope of the logarithms and its standard error). ` +
        "All four come to the same sum; " +
        "only lendPacks says what one more pack would bring, and which of equal answers it gives.",
      tasks: [
        { name: "lendPacks", work: () => lendPacks(table, policy) },
        { name: "munkres, a column for each pack", work: byPairs },
        { name: "linear-sum-assignment, a column for each pack", work: byRows },
        { name: "highs, as a linear programme", work: byProgramme },
      ],
    };
  },
};
