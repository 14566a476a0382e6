import { InvalidArgumentError } from "@tapewise/outcome";
import { chooseFamily, fitDistribution, lognormalDistribution } from "@tapewise/population";
import { describe, expect, test } from "vitest";

/** A sample that lies on the quantiles of a lognormal distribution. */
const truth = lognormalDistribution({ meanLog: 6.7, sdLog: 0.15 });
const girths = Array.from({ length: 150 }, (_, i) => truth.quantile((i + 0.5) / 150));

describe("chooseFamily", () => {
  test("puts the family that made a sample first", () => {
    const ranked = chooseFamily(girths);
    expect(ranked.map(({ fit }) => fit.family)).toHaveLength(4);
    expect(ranked[0]?.fit.family).toBe("lognormal");
    expect(ranked[0]?.behind).toBe(0);
    const behind = ranked.map((each) => each.behind);
    expect(behind).toEqual([...behind].sort((a, b) => a - b));
    expect(ranked.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  test("goes by the criterion it is told", () => {
    for (const criterion of ["aic", "bic"] as const) {
      const ranked = chooseFamily(girths, { families: ["mixture", "normal"], criterion });
      const direct =
        fitDistribution("mixture", girths)[criterion] - fitDistribution("normal", girths)[criterion];
      const [best, other] = ranked;
      expect(other?.behind).toBeCloseTo(Math.abs(direct), 8);
      expect(best?.fit.family).toBe(direct < 0 ? "mixture" : "normal");
      expect((best?.weight ?? 0) / (other?.weight ?? 1)).toBeCloseTo(Math.exp(Math.abs(direct) / 2), 6);
    }
  });

  test("passes over what cannot be: logarithms of values below 0", () => {
    const differences = girths.map((girth) => girth - 900);
    const families = chooseFamily(differences, { families: ["normal", "lognormal"] }).map(
      ({ fit }) => fit.family,
    );
    expect(families).toEqual(["normal"]);
    expect(() => chooseFamily(differences, { families: ["lognormal"] })).toThrow(InvalidArgumentError);
  });
});
