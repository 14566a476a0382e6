import { safeComponentIcc } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { studyOf } from "./studies.ts";

const study = studyOf([
  [430, 434, 431],
  [446, 452, undefined],
  [410, 415, 414],
  [undefined, 426, 421],
  [463, 465, 462],
]);

describe("safeComponentIcc", () => {
  test("is the share of the components", () => {
    const { agreement, consistency, components } = unwrap(safeComponentIcc(study));
    const { subjectVariance, measurerVariance = 0, residualVariance } = components;
    expect(measurerVariance).toBeGreaterThan(0);
    expect(agreement.value).toBeCloseTo(
      subjectVariance / (subjectVariance + measurerVariance + residualVariance),
      14,
    );
    expect(consistency.value).toBeCloseTo(subjectVariance / (subjectVariance + residualVariance), 14);
    for (const { lower, value, upper } of [agreement, consistency]) {
      expect(lower).toBeLessThan(value);
      expect(value).toBeLessThan(upper);
    }
  });

  test("of a mean, the error is parted among its readings", () => {
    const { agreement, components } = unwrap(
      safeComponentIcc(study, { meanOf: { measurers: 2, repeats: 3 } }),
    );
    const { subjectVariance, measurerVariance = 0, residualVariance } = components;
    const error = measurerVariance / 2 + residualVariance / 6;
    expect(agreement.value).toBeCloseTo(subjectVariance / (subjectVariance + error), 14);
  });

  test("gives the same every time, and another interval with other random numbers", () => {
    expect(safeComponentIcc(study)).toEqual(safeComponentIcc(study));
    const [a, b] = [1, 2].map(
      (seed) => unwrap(safeComponentIcc(study, { random: createRandom(seed) })).agreement,
    );
    expect(a?.value).toBe(b?.value);
    expect(a?.lower).not.toBe(b?.lower);
    expect(a?.lower).toBeCloseTo(b?.lower ?? 0, 1);
  });

  test("one measurer: repeatability alone", () => {
    const { agreement, consistency } = unwrap(
      safeComponentIcc(studyOf([[[430, 432]], [[445, 449]], [[411, 411]]])),
    );
    expect(agreement).toEqual(consistency);
  });

  test("repeats: the interaction is seen against the repeats", () => {
    const rows = [
      [[430, 432], [437, 434], [431]],
      [[446, 445], [449], [452, 450]],
      [[410], [415, 413], [409, 412]],
      [
        [421, 424],
        [430, 428],
        [419, 423],
      ],
    ];
    const { components, agreement } = unwrap(safeComponentIcc(studyOf(rows)));
    expect(components.terms).toContain("subject-by-measurer");
    expect(agreement.lower).toBeGreaterThan(0);
  });

  test("hands on the issues of the components, and refuses options out of range", () => {
    expect(safeComponentIcc(studyOf([[430], [440]])).issues[0]?.code).toBe("components-error-unseen");
    expect(() => safeComponentIcc(study, { meanOf: { measurers: 0, repeats: 1 } })).toThrow(
      "meanOf.measurers",
    );
    expect(() => safeComponentIcc(study, { draws: 10 })).toThrow("options.draws");
    expect(() => safeComponentIcc(study, { confidence: 0 })).toThrow("options.confidence");
  });
});
