import { memoryOutcomeStore, readOutcomes } from "@tapewise/afterwards";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { rowOf } from "./rows.ts";

test("rows come back in their order with the numbers of their lines", async () => {
  const store = memoryOutcomeStore();
  for (const id of ["a", "b"]) unwrap(await store.append(rowOf({ id })));
  const read: unknown[] = [];
  for await (const { line, outcome } of store.read()) read.push([line, outcome.ok && outcome.value.id]);
  expect(read).toEqual([
    [1, "a"],
    [2, "b"],
  ]);
});

test("what is no row is refused, and nothing is kept", async () => {
  const store = memoryOutcomeStore();
  expect((await store.append(rowOf({ at: "" }))).ok).toBe(false);
  expect((await readOutcomes(store)).rows).toEqual([]);
});

test("a row that is changed afterwards by the caller stays what it was", async () => {
  const store = memoryOutcomeStore();
  const product = { chart: "Doily 45" };
  await store.append(rowOf({ product }));
  product.chart = "another";
  expect((await readOutcomes(store)).rows).toEqual([rowOf()]);
});

test("a person who is forgotten takes all rows with them, and nobody else's", async () => {
  const store = memoryOutcomeStore();
  for (const person of ["p1", "p2", "p1", "p11"]) await store.append(rowOf({ person }));
  await store.append(rowOf());
  expect(unwrap(await store.forget("p1"))).toEqual({ rows: 2, unreadable: 0 });
  expect((await readOutcomes(store)).rows.map(({ person }) => person)).toEqual(["p2", "p11", undefined]);
});

test("who reads while rows are added sees those that were there", async () => {
  const store = memoryOutcomeStore();
  await store.append(rowOf({ id: "a" }));
  let count = 0;
  for await (const _ of store.read()) {
    count += 1;
    await store.append(rowOf());
  }
  expect(count).toBe(1);
});
