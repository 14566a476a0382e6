import { auditChart, auditChartText } from "@tapewise/charts";
import { expect, test } from "vitest";
import { codes, read } from "./charts-in-tests.ts";

const options = { chart: "c" };

test("tells what only the text shows, and then what the chart shows", () => {
  const text = "size,torso (cm),torso (in)\nS,38-43,15-19\nM,45-50,17 3/4-19 3/4";
  const issues = auditChartText(text, options);
  expect(codes(issues)).toEqual(["chart-statements-disagree", "chart-gap"]);
  expect(issues.slice(1)).toEqual(auditChart(read(text).chart));
});

test("tells why there is no chart", () => {
  expect(codes(auditChartText("", options))).toEqual(["chart-empty"]);
});

test("has nothing to say of a sound chart", () => {
  expect(auditChartText('{"chart":"c","sizes":[{"size":"M","torso-length":"43-48 cm"}]}')).toEqual([]);
});
