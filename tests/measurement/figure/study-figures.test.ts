import { studyFigures, summariseStudy } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { ANN_AND_BEN, studyOf } from "../class-study.ts";

test("every picture that the study has figures for", () => {
  const kinds = (study: typeof ANN_AND_BEN) =>
    studyFigures(study, summariseStudy(study), "cm").map(({ kind }) => kind);
  expect(kinds(ANN_AND_BEN)).toEqual(["readings", "agreement", "errors"]);
  expect(kinds(studyOf({ mia: { Ann: [430, 431] } }))).toEqual(["readings"]);
});

test("of many pairs, the six that agree least", () => {
  // Five measurers make ten pairs; each reads by its own amount more than the one before, and a little otherwise.
  const more = { A: 0, B: 1, C: 3, D: 7, E: 15 };
  const study = studyOf(
    Object.fromEntries(
      Array.from({ length: 6 }, (_, s) => [
        `s${s}`,
        Object.fromEntries(
          Object.entries(more).map(([name, mm], m) => [name, [430 + 5 * s + mm + (s === m ? 0.1 : 0)]]),
        ),
      ]),
    ),
  );
  const titles = studyFigures(study, summariseStudy(study), "cm")
    .filter(({ kind }) => kind === "agreement")
    .map(({ text }) => text.title.slice(0, "A less E".length));
  expect(titles).toHaveLength(6);
  // Apart by 15, 14, 12, 8, 7 and 6 mm.
  expect(new Set(titles)).toEqual(
    new Set(["A less E", "B less E", "C less E", "D less E", "A less D", "B less D"]),
  );
});
