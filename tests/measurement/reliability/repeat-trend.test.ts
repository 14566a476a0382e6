import { parseStudy, safeRepeatTrend } from "@tapewise/measurement";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { incomplete } from "../../../reference-checks/measurement-tem-figures.ts";

test("a common slope in cells of unequal size, against lm of R 4.2.2", () => {
  const { all } = unwrap(safeRepeatTrend(parseStudy(incomplete.text)));
  expect(all.slope.value).toBeCloseTo(incomplete.trend.slope, 11);
  expect(all.standardErrorMm).toBeCloseTo(incomplete.trend.error, 11);
  expect(all.degreesOfFreedom).toBe(incomplete.trend.df);
  expect(all.pValue).toBeCloseTo(incomplete.trend.pValue, 11);
  expect(all.slope.lower).toBeCloseTo(incomplete.trend.lower, 10);
  expect(all.slope.upper).toBeCloseTo(incomplete.trend.upper, 10);
});

test("measurers who drift in opposite ways show apart", () => {
  const { all, perMeasurer } = unwrap(
    safeRepeatTrend(
      parseStudy(
        "subject,A1 (mm),A2 (mm),A3 (mm),B1 (mm),B2 (mm),B3 (mm)\nmia,430,433,436,436,433,430\nleo,480,483,486,486,483,480\n",
      ),
    ),
  );
  expect(all.slope.value).toBeCloseTo(0, 12);
  expect(perMeasurer.map(({ measurer, trend }) => [measurer, trend.slope.value])).toEqual([
    ["A", 3],
    ["B", -3],
  ]);
  // Readings on the line leave nothing to hold the slope against.
  expect(perMeasurer[0]?.trend).toMatchObject({ standardErrorMm: 0, slope: { lower: 3, upper: 3 } });
  expect(perMeasurer[0]?.trend).not.toHaveProperty("pValue");
});

test("too few readings are said to be", () => {
  const codes = (text: string) => safeRepeatTrend(parseStudy(text)).issues.map(({ code }) => code);
  expect(codes("subject,A1 (mm),A2 (mm)\nmia,430,434\n")).toEqual(["trend-unknown"]);
  expect(codes("subject,A1 (mm),B1 (mm)\nmia,430,434\nleo,480,484\n")).toEqual(["trend-unknown"]);
});

test("a confidence that is none is refused", () => {
  const study = parseStudy("subject,A1 (mm),A2 (mm),A3 (mm)\nmia,430,434,431\n");
  expect(() => safeRepeatTrend(study, { confidence: 2 })).toThrow(InvalidArgumentError);
});
