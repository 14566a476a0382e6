import { chartToData } from "@tapewise/charts";
import { chartSchema } from "@tapewise/charts/schema";
import { describe, expect, test } from "vitest";
import { read } from "./charts-in-tests.ts";

const size = { size: "M", "torso-length": "43-48 cm" };
const accepts = (data: unknown): boolean => chartSchema.safeParse(data).success;

test("accepts what chartToData writes", () => {
  const { chart } = read(
    "# cut: men\nsize,torso (cm),hips (in)\nS/M,38-43,-\nL,46,40+\n\nbelt,hip belt (cm)\nS,70-90",
  );
  expect(chartSchema.parse(chartToData(chart))).toEqual(chartToData(chart));
});

describe("refuses what has not the form", () => {
  test.each([
    ["nothing", undefined],
    ["no name", { sizes: [size] }],
    ["a blank name", { chart: "  ", sizes: [size] }],
    ["no sizes", { chart: "c" }],
    ["an empty list of sizes", { chart: "c", sizes: [] }],
    ["an unknown part", { chart: "c", sizes: [size], brand: "x" }],
    ["an unknown dimension", { chart: "c", sizes: [{ size: "M", "torso-lenght": "43 cm" }] }],
    ["a number for a length", { chart: "c", sizes: [{ size: "M", "torso-length": { from: 38 } }] }],
    ["a capacity in words", { chart: "c", sizes: [{ ...size, capacityLitres: "40 L" }] }],
    [
      "a capacity without end",
      { chart: "c", sizes: [{ ...size, capacityLitres: Number.POSITIVE_INFINITY }] },
    ],
    ["an unknown cut", { chart: "c", cut: "ladies", sizes: [size] }],
    [
      "a second statement of a second statement",
      { chart: "c", sizes: [{ size: "M", stature: { from: "1 m", also: { also: "3 ft" } } }] },
    ],
    ["a belt with a capacity", { chart: "c", sizes: [size], belts: [{ belt: "S", capacityLitres: 3 }] }],
  ])("%s", (_name, data) => {
    expect(accepts({ chart: "c", sizes: [size] })).toBe(true);
    expect(accepts(data)).toBe(false);
  });
});
