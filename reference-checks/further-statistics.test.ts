import { editDistance } from "@tapewise/outcome";
import {
  bivariateNormalBox,
  decimalDifferences,
  integrateFromZero,
  median,
  mergeMoments,
  momentsOf,
  normalCdfInto,
  studentTPdf,
  summariseMoments,
} from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import further from "./further-values.json" with { type: "json" };
import values from "./statistics-values.json" with { type: "json" };
import { type Against, against } from "./table/against.ts";

const { statistics } = further;
const row = (name: string, source: string, why: string): Against =>
  against({ of: `statistics.${name}`, source, origin: further.origin as `recomputed${string}`, why });

test.each(statistics.studentTPdf)("density of t($df) at $t", ({ t, df, value }) => {
  row("studentTPdf", "DLMF 5.12, the density by gamma functions", "tens of roundings").relative(
    studentTPdf(t, df),
    value,
    3e-14,
  );
});

test("medians are NumPy's", () => {
  for (const { values: sample, value } of statistics.median) {
    row("median", "NumPy's median of invented lengths", "the mean of two values").relative(
      median(sample),
      value,
      2e-16,
    );
  }
});

test.each(statistics.merge)("moments of two samples as one", ({ first, second, mean, sd }) => {
  const both = summariseMoments(mergeMoments(momentsOf(first), momentsOf(second)));
  const merged = row(
    "mergeMoments",
    "both samples in one, by exact fractions of the doubles",
    "tens of roundings",
  );
  merged.relative(both.mean, mean, 1e-15);
  merged.relative(both.sd, sd, 1e-13);
});

test.each(statistics.decimalDifferences)(
  "differences of decimals from $from",
  ({ values: list, differences }) => {
    const ours = decimalDifferences(list);
    expect(ours).toHaveLength(list.length);
    differences.forEach((difference, i) => {
      row(
        "decimalDifferences",
        "exact fractions of the decimals that were written",
        "the nearest double",
      ).same(ours[i], Number(difference));
    });
  },
);

test("integrals of curves whose integral is known", () => {
  const curves: Readonly<Record<string, (x: number) => number>> = {
    square: (x) => x * x,
    exponential: Math.exp,
    cosine: Math.cos,
  };
  for (const { name, to, value } of statistics.integrals) {
    const curve = curves[name];
    expect(curve).toBeDefined();
    if (curve === undefined) continue;
    row("integrateFromZero", "x², eˣ and cos x by their antiderivatives", "one Gauss–Legendre rule").relative(
      integrateFromZero(curve, to),
      value,
      1e-14,
    );
  }
});

test("many normal shares at once are those of single ones", () => {
  const z = Float64Array.from(values.normal, (one) => one.z);
  const out = new Float64Array(z.length);
  normalCdfInto(z, out);
  values.normal.forEach(({ below }, i) => {
    against({
      of: "statistics.normalCdfInto",
      source: "DLMF, chapters 5, 7 and 8",
      origin: "recomputed with mpmath 1.3, 50 digits and more",
      why: "six roundings",
    }).relative(out[i], below, 6 * 2 ** -53);
  });
});

describe("risks of a tolerance (JCGM 106:2012): a false acceptance is a box of two correlated normal variables", () => {
  test.each(statistics.falseAccept)("tolerance $tolerance, acceptance $acceptance", (one) => {
    const [sd, errorSd] = [Number(one.sd), Number(one.errorSd)];
    const whole = Math.hypot(sd, errorSd);
    const rho = sd / whole;
    const [t, a] = [one.tolerance / sd, one.acceptance / whole];
    const accepted = bivariateNormalBox(Number.NEGATIVE_INFINITY, -t, -a, a, rho) * 2;
    const inside = bivariateNormalBox(-t, t, -a, a, rho);
    const rejected = bivariateNormalBox(-t, t, Number.NEGATIVE_INFINITY, -a, rho) * 2;
    const risk = row(
      "bivariateNormalBox",
      "risks of conformity (JCGM 106:2012) by quadrature",
      "absolute error of a box",
    );
    risk.absolute(accepted, one.falseAccept, 1e-15);
    risk.absolute(rejected, one.falseReject, 1e-15);
    expect(inside + accepted + rejected).toBeLessThan(1);
    against({
      of: "statistics.bivariateNormalBox",
      source: "risks of conformity: test values of the open calculator Suncal",
      origin: "printed (second-hand)",
      why: "its quadrature has six decimals of a percent",
    }).absolute(100 * accepted, one.printedPercent, one.printedPercent.length > 6 ? 1e-6 : 0.01);
  });
});

test.each([
  // Levenshtein's distance, worked by hand: kitten → sitten → sittin → sitting; the others likewise.
  ["kitten", "sitting", 3],
  ["flaw", "lawn", 2],
  ["torso", "torso", 0],
  ["waist", "wrist", 1],
  ["", "hip", 3],
])("from %s to %s there are %i changes", (a, b, changes) => {
  against({
    of: "outcome.editDistance",
    source: "Levenshtein's distance (V. Levenshtein 1966)",
    origin: "worked by hand",
    why: "whole numbers",
  }).same(editDistance(a, b), changes);
});
