import { InvalidArgumentError } from "@tapewise/outcome";
import { menReference, type ReferencePriorInput, referencePrior, womenReference } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const at = <T>(list: readonly T[], index: number): T => {
  const value = list[index];
  if (value === undefined) throw new Error(`nothing at ${index}`);
  return value;
};

describe("the prior of a cut", () => {
  test("is what the survey says of the cut as a whole", () => {
    const prior = referencePrior({ cut: "women" });
    expect(prior.dimensions).toEqual(["torso-length", "back-waist-length", "shoulder-breadth"]);
    expect(prior.meanMm).toEqual([400.0101, 425.4939, 365.0273]);
    // 22.7065² and 0.592486 · 22.7065 · 26.5587
    expect(at(at(prior.covarianceMm2, 0), 0)).toBeCloseTo(515.58514225, 9);
    expect(at(at(prior.covarianceMm2, 0), 1)).toBeCloseTo(357.3017, 3);
    expect(prior.label).toBe("women");
  });

  test("carries its source and what it does not hold for", () => {
    for (const cut of ["women", "men"] as const) {
      const prior = referencePrior({ cut });
      expect(prior.source).toContain("NATICK/TR-15/007");
      expect(prior.caveat).toContain("Soldiers");
    }
  });
});

describe("the prior of a cut and a stature", () => {
  test("is the conditional normal distribution, by hand for women of 1710 mm", () => {
    const prior = referencePrior({ cut: "women", statureMm: millimetres(1710) });
    // Stature 1627.9273 ± 64.1435: 1710 is 82.0727 above, 1.2795170 standard deviations.
    // Torso length 400.0101 + 0.595362 · 22.7065 · 1.2795170 = 400.0101 + 17.2971
    expect(at(prior.meanMm, 0)).toBeCloseTo(417.3072, 3);
    // Back waist length 425.4939 + 0.51842 · 26.5587 · 1.2795170 = 425.4939 + 17.6172
    expect(at(prior.meanMm, 1)).toBeCloseTo(443.1111, 3);
    // 22.7065² (1 − 0.595362²) = 515.585142 · 0.645544 = 332.83288
    expect(at(at(prior.covarianceMm2, 0), 0)).toBeCloseTo(332.8329, 3);
    // 22.7065 · 26.5587 · (0.592486 − 0.595362 · 0.51842) = 603.055122 · 0.283838 = 171.16997
    expect(at(at(prior.covarianceMm2, 0), 1)).toBeCloseTo(171.17, 2);
  });

  test("at the mean stature has the means of the cut, and less spread", () => {
    const whole = referencePrior({ cut: "men" });
    const prior = referencePrior({ cut: "men", statureMm: millimetres(1755.6598) });
    prior.meanMm.forEach((mean, i) => {
      expect(mean).toBeCloseTo(at(whole.meanMm, i), 10);
    });
    // 25.0539 √(1 − 0.595529²) = 25.0539 · 0.803334 = 20.1267
    expect(Math.sqrt(at(at(prior.covarianceMm2, 0), 0))).toBeCloseTo(20.1267, 3);
  });

  test("moves the torso length by about 4 mm for 2 cm of stature", () => {
    for (const cut of ["women", "men"] as const) {
      const [shorter, taller] = [1700, 1720].map(
        (mm) => referencePrior({ cut, statureMm: millimetres(mm) }).meanMm[0],
      );
      // 20 · 0.595362 · 22.7065 / 64.1435 = 4.2; 20 · 0.595529 · 25.0539 / 68.6144 = 4.3
      expect((taller ?? 0) - (shorter ?? 0)).toBeGreaterThan(4.2);
      expect((taller ?? 0) - (shorter ?? 0)).toBeLessThan(4.4);
    }
  });

  test("says for whom it is, to the centimetre", () => {
    expect(referencePrior({ cut: "women", statureMm: millimetres(1714) }).label).toBe("women 171 cm tall");
    expect(referencePrior({ cut: "men", statureMm: millimetres(1817.8) }).label).toBe("men 182 cm tall");
  });

  test("says when nobody behind the figures had that stature", () => {
    const surveyed = referencePrior({ cut: "women", statureMm: millimetres(1435) });
    expect(surveyed.caveat).toBe(womenReference.caveat);
    for (const mm of [1434, 1828]) {
      expect(referencePrior({ cut: "women", statureMm: millimetres(mm) }).caveat).toBe(
        `${womenReference.caveat} None of the people behind these figures was shorter than 143 cm or taller ` +
          "than 183 cm: beyond that they are extrapolated.",
      );
    }
    expect(referencePrior({ cut: "men", statureMm: millimetres(1980) }).caveat).toBe(menReference.caveat);
    expect(referencePrior({ cut: "men", statureMm: millimetres(1100) }).caveat).toContain(
      "149 cm or taller than 198 cm",
    );
  });
});

describe("a programmer's mistake throws", () => {
  test.each<[object, string]>([
    [{ cut: "unisex" }, "cut must be women or men, but received unisex"],
    [{ cut: "Women" }, "cut must be women or men"],
    [{}, "cut must be women or men, but received nothing"],
    [{ cut: "toString" }, "cut must be women or men"],
    [{ cut: "women", statureMm: 0 }, "statureMm must be a finite stature above 0 mm, but received 0"],
    [{ cut: "women", statureMm: -1710 }, "statureMm must be"],
    [{ cut: "women", statureMm: Number.NaN }, "statureMm must be"],
    [{ cut: "women", statureMm: Number.POSITIVE_INFINITY }, "statureMm must be"],
    [{ cut: "women", statureMm: "1710" }, "statureMm must be"],
    [{ cut: "women", statureMm: null }, "statureMm must be"],
  ])("%j", (input, message) => {
    const attempt = () => referencePrior(input as ReferencePriorInput);
    expect(attempt).toThrow(InvalidArgumentError);
    expect(attempt).toThrow(message);
  });
});

describe("readings along the spine", () => {
  const straight = referencePrior({ cut: "women" });

  test("move the torso length alone, by what the caller says", () => {
    const along = referencePrior({ cut: "women", curveSurplusMm: 10 });
    const moved = along.meanMm.map((mean, i) => mean - (straight.meanMm[i] ?? 0));
    expect(along.dimensions[0]).toBe("torso-length");
    expect(moved.map((length) => Number(length.toFixed(9)))).toEqual([10, 0, 0]);
    expect(along.covarianceMm2).toEqual(straight.covarianceMm2);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("a surplus of %d is refused", (curveSurplusMm) => {
    expect(() => referencePrior({ cut: "men", curveSurplusMm })).toThrow(InvalidArgumentError);
  });
});
