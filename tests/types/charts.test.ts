import type { BeltSize, ChartData, ChartDimension, Cut, Size, SizeChart, SizeRange } from "@tapewise/charts";
import { auditReport, inferNominalIntervals, safeParseChart, sizesInOrder } from "@tapewise/charts";
import { chartSchema } from "@tapewise/charts/schema";
import { interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { millimetres } from "@tapewise/units";
import { expect, expectTypeOf, test } from "vitest";

const range: SizeRange = { interval: interval(430, 480), basis: "range", stated: ["43-48 cm"] };
const size: Size = { name: "M", covers: ["M"], ranges: { "torso-length": range } };
const chart: SizeChart = { chart: "c", swappable: [], sizes: [size], belts: [] };

test("a chart is built of known words only", () => {
  // @ts-expect-error a dimension that nobody knows
  const unknown: Size = { name: "M", covers: ["M"], ranges: { "torso-lenght": range } };
  // @ts-expect-error "hip" alone is not a dimension
  const hip: ChartDimension = "hip";
  // @ts-expect-error a cut is one of four words
  const cut: Cut = "ladies";
  // @ts-expect-error a lid cannot be had in another size
  const swappable: SizeChart = { ...chart, swappable: ["lid"] };
  // @ts-expect-error a chart says what can be swapped, if only by an empty list
  const silent: SizeChart = { chart: "c", sizes: [size], belts: [] };
  expect([unknown, hip, cut, swappable, silent]).toHaveLength(5);
});

test("an interval says how it came about, and lengths carry their unit", () => {
  // @ts-expect-error without a basis
  const bare: SizeRange = { interval: interval(430, 480), stated: [] };
  // @ts-expect-error a bare number is no length
  const nominal: SizeRange = { ...range, basis: "nominal", nominalMm: 460 };
  // @ts-expect-error nor is it the half-width of a lone nominal length
  const outcome = safeParseChart("size,torso (cm)\nM,46", { loneNominalHalfWidth: 20 });
  expect([bare, nominal]).toHaveLength(2);
  expect(outcome.ok).toBe(true);
  expect(safeParseChart("size,torso (cm)\nM,46", { loneNominalHalfWidth: millimetres(20) }).ok).toBe(true);
});

test("a chart cannot be changed after it was read", () => {
  const frozen: SizeChart = Object.freeze({ ...chart });
  expect(() => {
    // @ts-expect-error read only
    frozen.chart = "d";
  }).toThrow(TypeError);
  // @ts-expect-error a list of sizes has no push
  expect(chart.sizes.push).toBeTypeOf("function");
});

test("an outcome must be looked at before it is used", () => {
  const outcome = safeParseChart("size,torso (cm)\nM,43-48");
  // @ts-expect-error there may be no value
  expect(outcome.value).toBeDefined();
  // @ts-expect-error and what a chart does not state is not there
  expect(() => chart.sizes[0]?.ranges.stature.interval).toThrow(TypeError);
});

test("a finding's facts are known by its kind", () => {
  for (const finding of auditReport(chart)) {
    // @ts-expect-error not every finding has a width
    expect(finding.widthMm).toBeUndefined();
    if (finding.kind === "gap") expectTypeOf(finding.widthMm).toEqualTypeOf<number>();
    if (finding.kind === "length-suspicious") expectTypeOf(finding.slip).toExtend<string>();
  }
});

test("the types that others build on", () => {
  expectTypeOf<DimensionId>().toExtend<ChartDimension>();
  expectTypeOf<Exclude<ChartDimension, DimensionId>>().toEqualTypeOf<"unstated-hip-girth">();
  expectTypeOf(sizesInOrder(chart, "torso-length")).toEqualTypeOf<readonly Size[]>();
  expectTypeOf<BeltSize["ranges"]>().toEqualTypeOf<Size["ranges"]>();
  const parsed = chartSchema.safeParse({ chart: "c", sizes: [{ size: "M", "torso-length": "43-48 cm" }] });
  if (parsed.success) expectTypeOf(parsed.data).toEqualTypeOf<ChartData>();
  expect(parsed.success).toBe(true);
  // @ts-expect-error lengths are numbers, and not text
  expect(() => inferNominalIntervals(["46 cm"])).toThrow();
});
