import { safeVarianceComponents } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { studyOf } from "./studies.ts";

const codes = (rows: Parameters<typeof studyOf>[0], options = {}) =>
  safeVarianceComponents(studyOf(rows), options).issues.map(({ code }) => code);

describe("safeVarianceComponents", () => {
  test("one measurer, twice each, by hand", () => {
    // Subject means 431, 447 and 411: mean square between 2 × 652/2... = 2 × ((431−1289/3)² + …)/2.
    const parts = unwrap(safeVarianceComponents(studyOf([[[430, 432]], [[445, 449]], [[411, 411]]])));
    const mean = 1289 / 3;
    const between = (431 - mean) ** 2 + (447 - mean) ** 2 + (411 - mean) ** 2;
    // Within: (2 + 8 + 0)/3.
    expect(parts.residualVariance).toBeCloseTo(10 / 3, 9);
    expect(parts.subjectVariance).toBeCloseTo((between - 10 / 3) / 2, 7);
    expect(parts.meanMm).toBeCloseTo(mean, 10);
    expect([parts.subjects, parts.measurers, parts.cells, parts.readings]).toEqual([3, 1, 3, 6]);
    expect(parts.terms).toEqual([]);
    expect(parts.measurerVariance).toBeUndefined();
  });

  test("takes the terms that the data can show", () => {
    const once = [
      [430, 434],
      [446, 453],
      [410, 415],
    ];
    const twice = once.map((row, s) => row.map((value, m) => [value, value + ((s + m) % 3)]));
    expect(unwrap(safeVarianceComponents(studyOf(once))).terms).toEqual(["measurer"]);
    expect(unwrap(safeVarianceComponents(studyOf(twice))).terms).toEqual(["measurer", "subject-by-measurer"]);
    expect(unwrap(safeVarianceComponents(studyOf(twice), { terms: [] })).terms).toEqual([]);
  });

  test("says when a variance is at 0", () => {
    const outcome = safeVarianceComponents(
      studyOf([
        [430, 434, 427],
        [446, 441, 449],
        [410, 411, 410],
      ]),
    );
    expect(unwrap(outcome).measurerVariance).toBe(0);
    expect(outcome.issues.map(({ code, facts }) => [code, facts.component])).toEqual([
      ["component-zero", "measurer"],
    ]);
  });

  test("says what cannot be seen", () => {
    expect(codes([[430, 434]])).toEqual(["components-subjects-few"]);
    expect(codes([[430], [440]])).toEqual(["components-error-unseen"]);
    expect(codes([[[430, 431]], [[440, 442]]], { terms: ["measurer"] })).toEqual([
      "components-measurers-few",
    ]);
    expect(
      codes(
        [
          [430, 434],
          [440, 447],
        ],
        { terms: ["measurer", "subject-by-measurer"] },
      ),
    ).toEqual(["components-repeats-few"]);
  });

  test("refuses readings that show no error", () => {
    expect(codes([[[430, 430]], [[430, 430]]])).toEqual(["components-no-scatter"]);
    expect(codes([[[430, 430]], [[441, 441]]])).toEqual(["components-no-scatter"]);
    // Ben is 4 mm above Ann with everybody.
    expect(
      codes([
        [430, 434],
        [441, 445],
        [409, 413],
      ]),
    ).toEqual(["components-no-scatter"]);
  });

  test("says when the study falls into parts", () => {
    const outcome = codes([
      [[430, 432], 434, undefined, undefined],
      [440, [445, 441], undefined, undefined],
      [undefined, undefined, 415, [419, 414]],
      [undefined, undefined, [452, 449], 451],
    ]);
    expect(outcome).toContain("components-unconnected");
  });

  test("thirty subjects, four measurers, three repeats take a moment", () => {
    const rows = Array.from({ length: 30 }, (_, s) =>
      Array.from({ length: 4 }, (_, m) =>
        Array.from(
          { length: 3 },
          (_, r) =>
            450 + 40 * Math.sin(7.1 * s) + 4 * Math.cos(m) + 5 * Math.sin(91.7 * s + 17.3 * m + 33.1 * r),
        ),
      ),
    );
    const study = studyOf(rows);
    const start = performance.now();
    expect(unwrap(safeVarianceComponents(study)).readings).toBe(360);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
