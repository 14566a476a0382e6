import { chooseRow, columnReasons, columnVerdicts, createRow, safeCompileColumns } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { chartOf, sizeOf } from "../cases.ts";

const chart = chartOf([
  sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [700, 980] }),
  sizeOf("M", { "torso-length": [420, 480], "hip-belt-girth": [760, 1040] }),
  sizeOf("L", { "torso-length": [470, 520], "hip-belt-girth": [800, 1200] }),
]);
const plan = unwrap(safeCompileColumns(chart, { read: ["torso-length", "hip-belt-girth"] }));

test("a row has a place for each dimension, each look and each size", () => {
  const row = createRow(plan, 4);
  expect([row.means, row.sds, row.degrees].map(({ length }) => length)).toEqual([2, 2, 2]);
  expect(row.looks).toHaveLength(8);
  expect([row.probabilities, row.misfits].map(({ length }) => length)).toEqual([3, 3]);
});

test("until something is put in, both lengths are 0 mm, and known", () => {
  const row = createRow(plan, 0);
  chooseRow(row);
  expect([...row.probabilities]).toEqual([0, 0, 0]);
  // What is missing to the lower ends: 380 + 700, 420 + 760, 470 + 800.
  expect([...row.misfits]).toEqual([1080, 1180, 1270]);
  expect(plan.sizes[row.pick]).toBe("S");
  expect(columnVerdicts[row.verdict]).toBe("outside-the-range");
  const told = columnReasons.filter((_, bit) => ((row.reasons >> bit) & 1) === 1);
  expect(told).toEqual(["nearest-size", "beyond-the-chart"]);
});

test("rows of one plan have nothing to do with each other", () => {
  const [one, other] = [createRow(plan, 0), createRow(plan, 0)];
  one.means.set([450, 900]);
  other.means.set([400, 800]);
  chooseRow(one);
  chooseRow(other);
  expect([one, other].map(({ pick }) => plan.sizes[pick])).toEqual(["M", "S"]);
  expect([...one.probabilities]).toEqual([0, 1, 0]);
});
