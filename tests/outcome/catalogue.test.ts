import { defineIssues, fillTemplate } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const definition = { severity: "error", message: "it rains", expected: "sun" } as const;

describe("defineIssues", () => {
  test("returns the very catalogue it was given", () => {
    const catalogue = { "it-rains": definition };
    expect(defineIssues(catalogue)).toBe(catalogue);
  });

  test.each(["rain", "rain2", "it-rains", "a-2-b"])("accepts the code %j", (code) => {
    expect(Object.keys(defineIssues({ [code]: definition }))).toEqual([code]);
  });

  test.each(["", "Rain", "it_rains", "it rains", "-rain", "rain-", "it--rains", "2-rains", "café"])(
    "refuses the code %j and says what a code looks like",
    (code) => {
      expect(() => defineIssues({ [code]: definition })).toThrow(
        expect.objectContaining({ name: "InvalidArgumentError", argument: "code" }),
      );
      expect(() => defineIssues({ [code]: definition })).toThrow("lower-case words joined by hyphens");
    },
  );

  test("refuses an empty message and an empty expected form, naming the code", () => {
    for (const part of ["message", "expected"]) {
      const faulty = { "it-rains": { ...definition, [part]: "" } };
      expect(() => defineIssues(faulty)).toThrow(
        'catalogue["it-rains"] must be a message and an expected form, but received ""',
      );
    }
  });
});

describe("fillTemplate", () => {
  test("fills every place of the same name", () => {
    expect(fillTemplate("{a} and {a} and {b}", { a: "x", b: 2 })).toBe("x and x and 2");
  });

  test("leaves a place without a fact as it is written", () => {
    expect(fillTemplate("{size} of {maker}", { size: "M" })).toBe("M of {maker}");
  });

  test("does not take inherited properties for facts", () => {
    expect(fillTemplate("{toString} {constructor}", {})).toBe("{toString} {constructor}");
  });

  test("puts facts in as they are, even when they look like patterns or places", () => {
    expect(fillTemplate("<{a}>", { a: "$& $1 {b}", b: "never" })).toBe("<$& $1 {b}>");
  });

  test("leaves braces that name nothing alone", () => {
    expect(fillTemplate("{} {1} {a b} {", { a: "x" })).toBe("{} {1} {a b} {");
  });
});
