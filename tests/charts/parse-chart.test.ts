import { parseChart, safeParseChart } from "@tapewise/charts";
import { InvalidArgumentError, IssuesError } from "@tapewise/outcome";
import { expect, test } from "vitest";

const csv = "size,torso (cm)\nM,43-48";
const json = '{"chart":"c","sizes":[{"size":"M","torso-length":"43-48 cm"}]}';

test.each([
  ["CSV", csv],
  ["JSON", json],
  ["JSON after space", `\n\t ${json}`],
  ["JSON after a byte order mark", `\uFEFF${json}`],
])("finds out what %s is", (_name, text) => {
  const outcome = safeParseChart(text, { chart: "c" });
  expect(outcome.issues).toEqual([]);
  expect(outcome.ok && outcome.value.sizes[0]?.ranges["torso-length"]?.interval.to).toBe(480);
});

test("believes the caller about the form", () => {
  expect(safeParseChart(csv, { format: "json" }).issues[0]?.code).toBe("chart-json-syntax");
  expect(safeParseChart(json, { format: "csv" }).ok).toBe(false);
  expect(() => safeParseChart(csv, { format: "xml" as never })).toThrow(InvalidArgumentError);
});

test("the other one gives the chart, or throws the same issues", () => {
  expect(parseChart(csv, { chart: "c" }).sizes[0]?.name).toBe("M");
  try {
    parseChart("{");
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(IssuesError);
    expect(error instanceof IssuesError && error.issues).toEqual(safeParseChart("{").issues);
  }
});

test("anything but text is no text", () => {
  for (const text of [undefined, null, 5, {}, Symbol("x")]) {
    expect(safeParseChart(text as never).issues[0]?.code).toBe("chart-not-text");
  }
});
