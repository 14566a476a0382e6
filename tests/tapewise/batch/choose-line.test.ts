import { safeParseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { chooseLine, choosePerson } from "tapewise/batch";
import { describe, expect, test } from "vitest";

const chart = unwrap(safeParseChart("size,torso-length (cm)\nS,38-43\nM,42-50\n", { chart: "Plain" }));

describe("chooseLine", () => {
  test("answers what the text describes", () => {
    const person = { id: "p1", readings: { "torso-length": ["44 cm", "44.3 cm"] } };
    expect(chooseLine(JSON.stringify(person), [chart])).toEqual(choosePerson(person, [chart]));
  });

  test.each(['{"id":"p2",', "", "NaN", "{'id':1}", "undefined"])(
    "%j is not JSON, and the line is named",
    (text) => {
      expect(chooseLine(text, [chart], { line: 12 })).toEqual({
        id: null,
        issues: [
          {
            code: "batch-line-not-json",
            severity: "error",
            path: [],
            message: "line 12 is not JSON",
            received: text,
            expected: "one JSON object a line",
            facts: { line: 12 },
          },
        ],
      });
    },
  );

  test("a field that is repeated is an error with its path, beside everything else", () => {
    const text = '{"id":7,"mood":"good","readings":{"torso-length":["44 cm"],"torso-length":["48 cm"]}}';
    const answer = chooseLine(text, [chart]);
    expect(answer).not.toHaveProperty("choices");
    expect(answer.id).toBe(7);
    expect(answer.issues?.map(({ code, severity, path }) => [code, severity, path])).toEqual([
      ["person-field-repeated", "error", ["readings", "torso-length"]],
      ["person-field-unknown", "warning", ["mood"]],
      ["reading-alone", "warning", ["readings", "torso-length"]],
    ]);
  });
});
