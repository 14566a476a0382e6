import { type LoggedOutcome, memoryOutcomeStore, readOutcomes, safeOutcomeRow } from "@tapewise/afterwards";
import { expect, test } from "vitest";
import { rowOf } from "./rows.ts";

test("rows are counted once by their id, and rows without one each", async () => {
  const store = memoryOutcomeStore();
  for (const id of ["a", "b", "a"]) await store.append(rowOf({ id }));
  for (let k = 0; k < 2; k += 1) await store.append(rowOf());
  const { rows, lines, issues } = await readOutcomes(store);
  expect(rows.map(({ id }) => id)).toEqual(["a", "b", undefined, undefined]);
  expect(lines).toEqual([1, 2, 4, 5]);
  expect(issues.map(({ code, place }) => [code, place?.line])).toEqual([["outcome-id-repeated", 3]]);
});

test("what a store cannot read is told with its line, and the rest is read", async () => {
  const values: readonly unknown[] = [rowOf(), {}, rowOf({ person: "a@b.org" })];
  const store = {
    async *read(): AsyncIterable<LoggedOutcome> {
      for (const [k, value] of values.entries()) yield { line: k + 1, outcome: safeOutcomeRow(value) };
    },
  };
  const { rows, issues } = await readOutcomes(store);
  expect(rows).toHaveLength(2);
  expect(issues.map(({ code, place }) => [code, place?.line])).toEqual([
    ["outcome-version-unknown", 2],
    ["outcome-person-identifying", 3],
  ]);
});
