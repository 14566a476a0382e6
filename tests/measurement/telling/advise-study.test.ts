import { adviseStudy, type Study, summariseStudy } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { ANN_AND_BEN, studyOf } from "../class-study.ts";

const codes = (study: Study) => adviseStudy(summariseStudy(study), "cm").map(({ code }) => code);

test("measurers who differ more than readings do: practise together, fetch a helper until then", () => {
  expect(codes(ANN_AND_BEN)).toEqual(expect.arrayContaining(["practise-together", "average-over-measurers"]));
  expect(codes(ANN_AND_BEN)).not.toContain("average-repeats");
});

test("readings that differ more than measurers do: practise the bones, read more often", () => {
  const study = studyOf(
    Object.fromEntries(
      // Readings 10 mm apart by each measurer, whose means are the same.
      [430, 445, 460, 475, 490].map((mm, s) => [`s${s}`, { Ann: [mm, mm + 10], Ben: [mm + 10, mm] }]),
    ),
  );
  const advice = adviseStudy(summariseStudy(study), "cm");
  expect(advice.map(({ code }) => code)).toEqual(
    expect.arrayContaining(["practise-landmarks", "average-repeats"]),
  );
  // sr² = 50 mm² and sL = 0: one reading errs by √50 mm, the mean of five by √10 mm.
  expect(advice.find(({ code }) => code === "average-repeats")?.sentence).toBe(
    "Take 5 readings of a person and use their mean: it errs by 0.32 cm where one reading errs by 0.71 cm.",
  );
});

test("a cell that stands apart is named", () => {
  const study = studyOf(
    Object.fromEntries(
      Array.from({ length: 12 }, (_, s) => [
        `s${s}`,
        { Ann: [430 + 5 * s, 431 + 5 * s], Ben: [431 + 5 * s, s === 4 ? 490 : 430 + 5 * s] },
      ]),
    ),
  );
  const [first] = adviseStudy(summariseStudy(study), "cm");
  expect(first?.code).toBe("look-at-outlying");
  expect(first?.sentence).toContain("s4 by Ben");
});

test("readings that drift and digits that are loved have their advice", () => {
  const study = studyOf(
    Object.fromEntries(
      [430, 445, 460, 475, 490].map((mm, s) => [`s${s}`, { Ann: [mm, mm + 10, mm + (s === 2 ? 20 : 15)] }]),
    ),
  );
  expect(codes(study)).toEqual(expect.arrayContaining(["stop-the-trend", "read-every-mark"]));
});

test("few subjects are told to become more, few measurers likewise", () => {
  expect(codes(ANN_AND_BEN)).toEqual(expect.arrayContaining(["ask-more-subjects", "ask-more-measurers"]));
});

test("there is always something to do", () => {
  expect(codes(studyOf({ mia: { Ann: [430] } }))).toEqual(["read-again"]);
});
