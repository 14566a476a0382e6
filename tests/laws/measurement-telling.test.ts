import { fc, test } from "@fast-check/vitest";
import {
  adviseStudy,
  createStudy,
  type StudyReading,
  studyPage,
  summariseStudy,
  tellStudy,
} from "@tapewise/measurement";
import { millimetres } from "@tapewise/units";
import { expect } from "vitest";
import { expectWellFormed } from "../measurement/figure/picture.ts";

const name = fc.string({ unit: "binary", minLength: 1, maxLength: 6 });

/** Studies with holes, whose names are anything at all. */
const studies = fc
  .record({
    subjects: fc.uniqueArray(name, { minLength: 1, maxLength: 5 }),
    measurers: fc.uniqueArray(name, { minLength: 1, maxLength: 3 }),
    repeats: fc.integer({ min: 1, max: 3 }),
    lengths: fc.array(fc.option(fc.integer({ min: 380, max: 520 })), { minLength: 45, maxLength: 45 }),
  })
  .map(({ subjects, measurers, repeats, lengths }) => {
    let next = 0;
    return subjects.flatMap((subject) =>
      measurers.flatMap((measurer) =>
        Array.from({ length: repeats }, (_, k) => ({
          subject,
          measurer,
          repeat: k + 1,
          mm: lengths[next++] ?? null,
        })),
      ),
    );
  })
  .map((cells) =>
    cells.flatMap(({ mm, ...cell }): readonly StudyReading[] =>
      mm === null ? [] : [{ ...cell, mm: millimetres(mm) }],
    ),
  )
  .filter((readings) => readings.length > 0)
  .map((readings) => createStudy({ dimension: "torso-length", readings }));

test.prop([studies, fc.constantFrom("cm" as const, "in" as const)])(
  "law: whatever a study holds, it is told in whole tables and with something to do",
  (study, unit) => {
    const report = summariseStudy(study);
    for (const { tables, meaning } of tellStudy(report, unit)) {
      expect(meaning).not.toMatch(/NaN|Infinity|undefined/);
      for (const { header, rows } of tables) {
        expect(rows.every((row) => row.length === header.length)).toBe(true);
      }
    }
    expect(adviseStudy(report, unit).length).toBeGreaterThan(0);
  },
);

test.prop([studies])("law: the page of a study is well-formed, whatever its names are", (study) => {
  const page = studyPage({ study, report: summariseStudy(study), issues: [], unit: "cm" });
  expectWellFormed(page);
  expect(page).not.toMatch(/<script|="NaN|="Infinity|="undefined/);
});
