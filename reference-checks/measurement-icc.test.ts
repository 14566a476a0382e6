import {
  createStudy,
  type IccForm,
  intraclassCorrelations,
  safeComponentIcc,
  twoWayAnova,
} from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { pefr, shroutFleiss } from "./measurement-agreement-figures.ts";
import { type Against, against, type Reference } from "./table/against.ts";

const FORMS = ["1,1", "2,1", "3,1", "1,k", "2,k", "3,k"] as const satisfies readonly IccForm[];
/** Some tens of roundings, of which each costs 2⁻⁵³ relative to the result. */
const CLOSE = 1e-14;

function expectRelative(actual: number, reference: number, tolerance: number): void {
  shroutAndFleiss("recomputed with exact fractions; intervals and p-values with R psych").relative(
    actual,
    reference,
    tolerance,
  );
}

const shroutAndFleiss = (origin: Reference["origin"]): Against =>
  against({
    of: "measurement.intraclassCorrelations",
    source: "Shrout & Fleiss 1979, Table 2",
    origin,
    why: "tens of roundings; R's F quantiles have about 13 digits",
  });

describe("Shrout & Fleiss (1979), Table 2", () => {
  const { anova, icc } = intraclassCorrelations(shroutFleiss.table);

  test.each(["subjects", "within", "measurers", "residual"] as const)("mean square: %s", (line) => {
    const [over = 0, under = 1] = shroutFleiss.exact.meanSquares[line];
    expectRelative(anova[line].meanSquare, over / under, CLOSE);
    shroutAndFleiss("printed (from memory)").printed(
      anova[line].meanSquare,
      shroutFleiss.printed.meanSquares[line],
    );
    against({
      of: "measurement.twoWayAnova",
      source: "Shrout & Fleiss 1979, Table 2",
      origin: "recomputed with exact fractions",
      why: "tens of roundings",
    }).relative(twoWayAnova(shroutFleiss.table)[line].meanSquare, over / under, CLOSE);
  });

  test.each(FORMS)("ICC(%s) as printed and as a fraction", (form) => {
    const [over, under] = shroutFleiss.exact.icc[form];
    expectRelative(icc[form].value, over / under, CLOSE);
    shroutAndFleiss("printed (from memory)").printed(icc[form].value, `0${shroutFleiss.printed.icc[form]}`);
  });

  test.each(FORMS)("interval of ICC(%s) as R psych has it", (form) => {
    const [lower, upper] = shroutFleiss.intervals[form];
    // The reference has 15 digits of a difference of F quantiles, which R has to about 1e-13.
    expectRelative(icc[form].lower, Number(lower), 1e-12);
    expectRelative(icc[form].upper, Number(upper), 1e-12);
  });

  test.each(["1,1", "2,1", "3,1"] as const)("F test of ICC(%s) as R psych has it", (form) => {
    const { f, df, p } = shroutFleiss.tests[form];
    expectRelative(icc[form].f, Number(f), CLOSE);
    expect(icc[form].degreesOfFreedom).toEqual(df);
    expectRelative(icc[form].pValue, Number(p), 1e-12);
  });

  test("the components of the same data, 100 mm added, give ICC(2,1) and ICC(3,1)", () => {
    const readings = shroutFleiss.table.flatMap((row, s) =>
      row.map((value, m) => ({
        subject: `t${s}`,
        measurer: `j${m}`,
        repeat: 1,
        mm: millimetres(100 + value),
      })),
    );
    const { agreement, consistency } = unwrap(safeComponentIcc(createStudy({ readings })));
    const ofComponents = against({
      of: "measurement.safeComponentIcc",
      source: "Shrout & Fleiss 1979, Table 2",
      origin: "recomputed with exact fractions",
      why: "restricted maximum likelihood ends within some 1e-9 of its maximum",
    });
    ofComponents.relative(agreement.value, 184 / 635, 1e-8);
    ofComponents.relative(consistency.value, 920 / 1287, 1e-8);
    // Consistency has an exact interval on complete data; 10 000 draws have it to about 0.01.
    const [lower, upper] = shroutFleiss.intervals["3,1"];
    expect(consistency.lower).toBeCloseTo(Number(lower), 1);
    expect(consistency.upper).toBeCloseTo(Number(upper), 2);
  });
});

test("Bland & Altman (1986): the Wright meter's two readings", () => {
  const { icc } = intraclassCorrelations(pefr.wright);
  expectRelative(icc["1,1"].value, Number(pefr.recomputed.wright.icc), CLOSE);
});
