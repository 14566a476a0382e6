import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { measuredVariables } from "../../../packages/population/src/reference/definitions.ts";
import { figuresOf } from "../../../packages/population/src/reference/figures-of.ts";
import { quantileShares } from "../../../packages/population/src/reference/reference-figures.ts";

describe.each(["women", "men"] as const)("figuresOf %s", (cut) => {
  const figures = figuresOf(cut);
  const names: readonly string[] = measuredVariables;

  test("has a mean, a row of covariances and quantiles for each variable", () => {
    const size = measuredVariables.length;
    expect(figures.mean).toHaveLength(size);
    expect(figures.covariance.map((row) => row.length)).toEqual(figures.mean.map((_, i) => i + 1));
    expect(Object.keys(figures.quantiles).toSorted()).toEqual(
      [...measuredVariables, "torso-length"].toSorted(),
    );
  });

  test("has quantiles in order, between the extremes, with the mean among them", () => {
    for (const [variable, values] of Object.entries(figures.quantiles)) {
      expect(values).toHaveLength(quantileShares.length + 2);
      expect(values).toEqual([...values].sort((a, b) => a - b));
      const mean = figures.mean[names.indexOf(variable)];
      if (mean === undefined) continue;
      expect(mean).toBeGreaterThan(values[3] ?? 0);
      expect(mean).toBeLessThan(values[8] ?? 0);
    }
  });
});

test("refuses other cuts", () => {
  // @ts-expect-error: the survey has women and men
  expect(() => figuresOf("all")).toThrow(InvalidArgumentError);
});
