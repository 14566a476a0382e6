import { sizesInOrder } from "@tapewise/charts";
import { expect, test } from "vitest";
import { read } from "./charts-in-tests.ts";

const names = (text: string): readonly string[] =>
  sizesInOrder(read(text).chart, "torso-length").map((size) => size.name);

test("goes by where ranges begin, then where they end, then by name", () => {
  expect(names("size,torso (cm)\nD,48+\nC,43-48\nB2,38-44\nB1,38-43\nA,<40\nb1x,38-43")).toEqual([
    "A",
    "B1",
    "b1x",
    "B2",
    "C",
    "D",
  ]);
});

test("leaves out sizes that do not state the dimension", () => {
  expect(names("size,torso (cm),hip belt (cm)\nM,43-48,80-90\nS,-,70-80")).toEqual(["M"]);
});

test("does not touch the chart", () => {
  const { chart } = read("size,torso (cm)\nL,48-53\nS,38-43");
  sizesInOrder(chart, "torso-length");
  expect(chart.sizes.map((size) => size.name)).toEqual(["L", "S"]);
});
