import type { LendingPolicy, OutcomeRow, OutcomeStore } from "@tapewise/afterwards";
import { lendPacks, memoryOutcomeStore, safeOutcomeRow } from "@tapewise/afterwards";
import { expect, test } from "vitest";

const row: OutcomeRow = {
  v: 1,
  at: "2026-05-04",
  product: { chart: "Doily 45" },
  size: "M",
  outcome: "kept",
};

test("rows that are none do not compile", () => {
  // @ts-expect-error a version that is not written today
  const newer: OutcomeRow = { ...row, v: 2 };
  // @ts-expect-error neither kept nor exchanged
  const lost: OutcomeRow = { ...row, outcome: "lost" };
  // @ts-expect-error a reason that is not known
  const colour: OutcomeRow = { ...row, outcome: "exchanged", reason: "colour" };
  // @ts-expect-error an estimate of something that is no dimension
  const arm: OutcomeRow = { ...row, estimates: { "arm-length": { mm: 600, uncertaintyMm: 5 } } };
  // @ts-expect-error an estimate without its uncertainty
  const bare: OutcomeRow = { ...row, estimates: { "torso-length": { mm: 436 } } };
  // @ts-expect-error a maker's name in the place of the chart's
  const unnamed: OutcomeRow = { ...row, product: { maker: "Invented Packs" } };
  for (const wrong of [newer, lost, colour, bare, unnamed]) expect(safeOutcomeRow(wrong).ok).toBe(false);
  expect(safeOutcomeRow(arm).issues.map(({ code }) => code)).toEqual(["outcome-field-unknown"]);
});

test("a row cannot be changed in place", () => {
  const given = { ...row };
  const frozen: OutcomeRow = Object.freeze(given);
  expect(() => {
    // @ts-expect-error rows are read only
    frozen.size = "L";
  }).toThrow(TypeError);
});

test("a store of one's own has all three functions", () => {
  const { append, read } = memoryOutcomeStore();
  // @ts-expect-error nobody could be forgotten
  const store: OutcomeStore = { append, read };
  expect(store.forget).toBeUndefined();
});

test("lending needs to be told what it counts to go without", () => {
  // @ts-expect-error no cost is assumed
  const policy: LendingPolicy = { goal: "chance" };
  const table = { members: ["a"], shelf: [], chances: [[]] };
  expect(() => lendPacks(table, policy)).toThrow("unservedCost");
});
