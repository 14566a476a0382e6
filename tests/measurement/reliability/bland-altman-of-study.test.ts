import { blandAltman, blandAltmanRepeats, safeMeasurerAgreement } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { studyOf } from "./studies.ts";

const names = { first: "Ann", second: "Cat" };
const rows = [
  [431, 430, 428],
  [446, 449, 447],
  [412, 411, 408],
  [455, 458, 453],
];

describe("safeMeasurerAgreement", () => {
  test("compares the two who are named", () => {
    const { limits, points } = unwrap(safeMeasurerAgreement(studyOf(rows), names));
    expect(limits).toEqual(blandAltman([431, 446, 412, 455], [428, 447, 408, 453]));
    expect(points[0]).toEqual({ subject: "s1", mean: 429.5, difference: 3 });
  });

  test("models repeats", () => {
    const repeated = [...rows, [[460, 462], 461, [458, 459]]];
    const { limits } = unwrap(safeMeasurerAgreement(studyOf(repeated), { ...names, multiplier: 2 }));
    const subjects = [
      { first: [431], second: [428] },
      { first: [446], second: [447] },
      { first: [412], second: [408] },
      { first: [455], second: [453] },
      { first: [460, 462], second: [458, 459] },
    ];
    expect(limits).toEqual(blandAltmanRepeats(subjects, { trueValue: "constant", multiplier: 2 }));
  });

  test("leaves out whom only one has read, and says so", () => {
    const outcome = safeMeasurerAgreement(studyOf([...rows, [470, 471, undefined]]), names);
    expect(unwrap(outcome).limits.bias.value).toBe(2);
    expect(outcome.issues.map(({ code, message }) => [code, message])).toEqual([
      ["agreement-subject-unpaired", "s5 was not read by both Ann and Cat and is left out"],
    ]);
  });

  test("refuses a name that is not in the study, too few subjects, differences without scatter", () => {
    const code = (study: ReturnType<typeof studyOf>, options = names) =>
      safeMeasurerAgreement(study, options).issues[0]?.code;
    expect(code(studyOf(rows), { first: "Ann", second: "Zoe" })).toBe("agreement-measurer-unknown");
    expect(code(studyOf(rows.slice(0, 2)))).toBe("agreement-subjects-few");
    expect(code(studyOf(rows.map(([a = 0]) => [a, a, a + 2])))).toBe("agreement-no-scatter");
    expect(code(studyOf(rows.map(([a = 0]) => [[a, a], a, [a + 2]])))).toBe("agreement-no-scatter");
  });
});
