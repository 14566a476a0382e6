import { grubbsCriticalValue, grubbsTest } from "@tapewise/measurement";
import { referencePopulation, referenceTable, truncatedNormal } from "@tapewise/population";
import { describe, expect, test } from "vitest";
import { ansurCorrelations, grubbsOneSided, grubbsSamples, truncated } from "./published-figures.ts";
import { against } from "./table/against.ts";

describe("Grubbs' test, one-sided at α, which is two-sided at 2α", () => {
  const levels = [0.1, 0.05, 0.025, 0.01, 0.005];

  test.each(grubbsOneSided)("critical values of $n", ({ n, exact, printed = [] }) => {
    expect(exact).toHaveLength(levels.length);
    levels.forEach((level, i) => {
      against({
        of: "measurement.grubbsCriticalValue",
        source: "Grubbs 1950 and 1969 by quantiles of t (NIST/SEMATECH e-Handbook 1.3.5.17.1)",
        origin: "recomputed with mpmath 1.3",
        why: "far quantiles of t",
      }).absolute(grubbsCriticalValue(n, 2 * level), exact[i] ?? "", 1e-10);
    });
    printed.forEach((value, i) => {
      against({
        of: "measurement.grubbsCriticalValue",
        source: "ASTM E178, Table 1 (Grubbs & Beck 1972)",
        origin: "printed (from memory)",
        why: "printed values are off the formula by up to 0.0012",
      }).absolute(grubbsCriticalValue(n, 2 * (levels[i + 1] ?? 0)), value, 0.0015);
    });
  });

  test.each(grubbsSamples)("$name", ({ values, index, statistic, critical }) => {
    const found = grubbsTest(values.map(Number), 0.05);
    const worked = against({
      of: "measurement.grubbsTest",
      source: "further worked examples, two-sided at 5 %",
      origin: "recomputed with mpmath 1.3",
      why: "a sample deviation, and a far quantile of t",
    });
    worked.absolute(found.statistic, statistic, 1e-12);
    worked.absolute(found.critical, critical, 1e-10);
    worked.same(found.isOutlier, Number(statistic) > Number(critical));
    // Of the six, 15 and 5 lie as far from 10.
    if (index === 1) expect(found.index).toBe(index);
  });
});

describe("correlations of everybody in ANSUR II, against those of the half that the model is of", () => {
  const rows = ansurCorrelations.flatMap(([cut, x, y, people, r]) => {
    const table = referenceTable(cut);
    const [a, b] = [x, y].map((column) => table.find((each) => each.column === column)?.variable);
    return a === undefined || b === undefined
      ? []
      : [{ name: `${cut}, ${x} and ${y}`, cut, a, b, people, r }];
  });

  test("there are some to compare", () => {
    expect(rows.length).toBeGreaterThanOrEqual(5);
  });

  test.each(rows)("$name", ({ cut, a, b, people, r }) => {
    const model = referencePopulation(cut);
    const [i, j] = [model.variables.indexOf(a), model.variables.indexOf(b)];
    const entry = (k: number, l: number): number => model.covariance[k]?.[l] ?? Number.NaN;
    const ours = entry(i, j) / Math.sqrt(entry(i, i) * entry(j, j));
    // A correlation of half of a finite population strays by (1 − r²) √(1/n − 1/N), n = N/2.
    const error = (1 - Number(r) ** 2) * Math.sqrt(1 / people);
    against({
      of: "population.referencePopulation",
      source: "ANSUR II (Gordon et al. 2014), correlations of everybody",
      origin: "recomputed with exact sums (Python 3)",
      why: "the model is of half of the people: four standard errors of such a half",
    }).absolute(ours, r, 4 * error);
  });
});

test.each(truncated)("of N($mean, $sd²) what lies from $from to $to", (one) => {
  const ours = truncatedNormal({ mean: one.mean, sd: one.sd, from: one.from, to: one.to });
  const row = against({
    of: "population.truncatedNormal",
    source: "statures above 175 cm, girths of one size",
    origin: "recomputed with mpmath 1.3",
    why: "tens of roundings of lengths in mm",
  });
  row.relative(ours.parameters.share, one.share, 1e-12);
  row.relative(ours.mean, one.leftMean, 1e-14);
  row.relative(ours.sd, one.leftSd, 1e-12);
});
