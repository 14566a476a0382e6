import { intraclassCorrelations, safeStudyIcc } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { studyOf } from "./studies.ts";

describe("safeStudyIcc", () => {
  test("takes cells for the table", () => {
    const rows = [
      [430, 434],
      [446, 452],
      [410, 415],
    ];
    const { averagedRepeats, ...analysis } = unwrap(safeStudyIcc(studyOf(rows)));
    expect(averagedRepeats).toBe(1);
    expect(analysis).toEqual(intraclassCorrelations(rows));
  });

  test("averages repeats, and says so", () => {
    const outcome = safeStudyIcc(
      studyOf([
        [
          [429, 431],
          [433, 435],
        ],
        [
          [446, 446],
          [450, 454],
        ],
        [
          [409, 411],
          [414, 416],
        ],
      ]),
    );
    const { averagedRepeats, icc } = unwrap(outcome);
    expect(averagedRepeats).toBe(2);
    expect(icc["2,1"].value).toBeCloseTo(
      intraclassCorrelations([
        [430, 434],
        [446, 452],
        [410, 415],
      ]).icc["2,1"].value,
      12,
    );
  });

  test("says which cell is short, and how many are", () => {
    const outcome = safeStudyIcc(
      studyOf([
        [[430, 431], 434],
        [[446, 447], undefined],
        [
          [410, 412],
          [415, 413],
        ],
      ]),
    );
    expect(outcome.ok).toBe(false);
    expect(outcome.issues.map(({ code, message }) => [code, message])).toEqual([
      [
        "icc-study-incomplete",
        "2 cells of the study lack readings; the first is that of s1 by Ben with 1 of 2",
      ],
    ]);
  });

  test("refuses a study of one measurer, and subjects who are all alike", () => {
    expect(safeStudyIcc(studyOf([[430], [440]])).issues[0]?.code).toBe("icc-study-small");
    expect(
      safeStudyIcc(
        studyOf([
          [430, 440],
          [430, 440],
        ]),
      ).issues[0]?.code,
    ).toBe("icc-subjects-alike");
  });
});
