import { InvalidArgumentError } from "@tapewise/outcome";
import { referencePopulation, referenceTable } from "@tapewise/population";
import { describe, expect, test } from "vitest";

describe.each(["women", "men"] as const)("referenceTable of %s", (cut) => {
  const rows = referenceTable(cut);

  test("has a row for each variable of the model, with the same mean and spread", () => {
    const model = referencePopulation(cut);
    expect(rows.map(({ variable }) => variable).toSorted()).toEqual([...model.variables].toSorted());
    for (const { variable, mean, sd, people, standardError } of rows) {
      const own = model.distribution(variable);
      expect([mean, sd]).toEqual([own.mean, own.sd]);
      expect(standardError).toBeCloseTo(sd / Math.sqrt(people), 12);
    }
  });

  test("says unit, source and caveat in each row, and how odd dimensions were taken", () => {
    for (const row of rows) {
      expect(row.unit).toBe(row.variable === "mass-kg" ? "kg" : "mm");
      expect(row.cut).toBe(cut);
      expect(row.source).toContain("NATICK/TR-15/007");
      expect(row.caveat).toContain("Soldiers");
      expect(row.note).not.toBe("");
      expect(row.column).not.toBe("");
    }
    const note = (variable: string) => rows.find((row) => row.variable === variable)?.note ?? "";
    expect(note("waist-girth")).toContain("omphalion");
    expect(note("torso-length")).toContain("straight");
  });

  test("has quantiles within the extremes", () => {
    for (const { quantiles, min, max } of rows) {
      expect(quantiles.map(({ share }) => share)).toEqual([
        0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99,
      ]);
      const values = [min, ...quantiles.map(({ value }) => value), max];
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(min).toBeGreaterThan(0);
    }
  });
});

test("refuses other cuts", () => {
  // @ts-expect-error: the survey has women and men
  expect(() => referenceTable("all")).toThrow(InvalidArgumentError);
});
