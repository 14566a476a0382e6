import { menReference, referencePrior, womenReference } from "@tapewise/population";
import { describe, expect, test } from "vitest";
import { fullSample } from "./population-figures.ts";
import { against } from "./table/against.ts";

/**
 * The package's figures are of half of the people. How far may they lie from those of all? n of N persons taken
 * without replacement have a mean that scatters by σ √(1/n − 1/N), and a standard deviation that scatters by
 * σ √((1/n − 1/N) (2 + κ)/4) with the excess kurtosis κ, here at most 0.6. Four of these are allowed.
 */
describe("half of the survey agrees with all of it", () => {
  test.each(fullSample)("%s, %s of %i persons", (cut, dimension, people, mean, sd) => {
    const figures = cut === "women" ? womenReference : menReference;
    const index = figures.dimensions.indexOf(dimension);
    const part = 1 / figures.count - 1 / people;
    const meanScatter = Number(sd) * Math.sqrt(part);
    const sdScatter = Number(sd) * Math.sqrt((part * (2 + 0.6)) / 4);
    expect(Math.abs((figures.meanMm[index] ?? Number.NaN) - Number(mean))).toBeLessThan(4 * meanScatter);
    expect(Math.abs((figures.sdMm[index] ?? Number.NaN) - Number(sd))).toBeLessThan(4 * sdScatter);
  });

  test("and the prior passes them on", () => {
    const prior = referencePrior({ cut: "women" });
    const [, dimension, people, mean, sd] = fullSample[1] ?? [];
    expect(dimension).toBe("back-waist-length");
    const index = prior.dimensions.indexOf("back-waist-length");
    const part = 1 / womenReference.count - 1 / (people ?? 0);
    const everybody = against({
      of: "population.referencePrior",
      source: "ANSUR II (Gordon et al. 2014), everybody",
      origin: "recomputed with exact fractions (Python 3)",
      why: "the prior is of half of the people: four standard errors of such a half",
    });
    everybody.absolute(prior.meanMm[index], mean ?? "", 4 * Number(sd) * Math.sqrt(part));
    const own = Math.sqrt(prior.covarianceMm2[index]?.[index] ?? Number.NaN);
    everybody.absolute(own, sd ?? "", 4 * Number(sd) * Math.sqrt((part * 2.6) / 4));
  });

  test("and persons were counted as the survey's even subject numbers allow", () => {
    for (const [cut, , people] of fullSample) {
      const { count } = cut === "women" ? womenReference : menReference;
      // Each number is even with probability ½: four standard deviations about half.
      expect(Math.abs(count - people / 2)).toBeLessThan(4 * Math.sqrt(people / 4));
    }
  });
});
