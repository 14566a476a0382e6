import { fc, test } from "@fast-check/vitest";
import { type LendingPolicy, type LendingTable, lendPacks } from "@tapewise/afterwards";
import { expect } from "vitest";
import { tryAll } from "../afterwards/lending/brute-force.ts";

/** Few different figures, so that much is equally good, and now and then any. */
const chance = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(0, 0.25, 0.5, 0.75, 1) },
  { weight: 1, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
);
const misfit = fc.oneof(fc.constantFrom(0, 5, 10), fc.double({ min: 0, max: 60, noNaN: true }));

const tables: fc.Arbitrary<LendingTable> = fc
  .oneof(
    fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 4 })),
    // Many who want few: where most has to be moved.
    fc.tuple(fc.integer({ min: 4, max: 6 }), fc.integer({ min: 2, max: 3 })),
  )
  .chain(([height, width]) => {
    const tableOf = (figure: fc.Arbitrary<number>) =>
      fc.array(fc.array(figure, { minLength: width, maxLength: width }), {
        minLength: height,
        maxLength: height,
      });
    return fc.record({
      members: fc.constant(Array.from({ length: height }, (_, i) => `m${i}`)),
      shelf: fc
        .array(fc.constantFrom(0, 1, 1, 2, 3), { minLength: width, maxLength: width })
        .map((counts) => counts.map((count, j) => ({ pack: `p${j}`, count }))),
      chances: tableOf(chance),
      misfitsMm: tableOf(misfit),
    });
  });

const policies: fc.Arbitrary<LendingPolicy> = fc.record({
  goal: fc.constantFrom("chance", "misfit"),
  unservedCost: fc.constantFrom(0, 0.25, 1, 10, 1000),
  leastChance: fc.constantFrom(0, 0.5, 1),
});

const placesOf = ({ members, shelf }: LendingTable, lent: readonly { member: string; pack: string }[]) =>
  members.map((member) => {
    const pack = lent.find((one) => one.member === member)?.pack;
    return pack === undefined ? shelf.length : shelf.findIndex((one) => one.pack === pack);
  });

test.prop([tables, policies], { numRuns: 1500 })(
  "law: no other way to lend is better, and of equals it is the first",
  (table, policy) => {
    const { lent } = lendPacks(table, policy);
    expect(placesOf(table, lent)).toEqual(tryAll(table, policy).places);
  },
);

test.prop([tables, policies])("law: one more of a pack brings what it is said to bring", (table, policy) => {
  const { next } = lendPacks(table, policy);
  const unit = policy.goal === "chance" ? 1e9 : 1e6;
  const before = tryAll(table, policy).worth;
  for (const [j, { pack }] of table.shelf.entries()) {
    const shelf = table.shelf.map((one, k) => (k === j ? { ...one, count: one.count + 1 } : one));
    const gained = Number(tryAll({ ...table, shelf }, policy).worth - before) / unit;
    expect(next.find((one) => one.pack === pack)?.gain ?? 0).toBe(gained);
  }
});

test.prop([tables, policies])(
  "law: everybody is counted once, and no pack is lent that is not there",
  (table, policy) => {
    const { lent, without, left, total } = lendPacks(table, policy);
    expect([...lent, ...without].map(({ member }) => member).toSorted()).toEqual(
      [...table.members].toSorted(),
    );
    for (const { pack, count } of table.shelf) {
      const given = lent.filter((one) => one.pack === pack).length;
      expect(given + (left.find((one) => one.pack === pack)?.count ?? 0)).toBe(count);
    }
    const figures = lent.map(({ chance, misfitMm }) => (policy.goal === "chance" ? chance : (misfitMm ?? 0)));
    expect(total).toBeCloseTo(
      figures.reduce((sum, figure) => sum + figure, 0),
      6,
    );
    expect(lent.every(({ chance }) => chance > 0 && chance >= (policy.leastChance ?? 0))).toBe(true);
  },
);
