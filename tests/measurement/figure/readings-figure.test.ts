import { createStudy, readingsFigure } from "@tapewise/measurement";
import { millimetres } from "@tapewise/units";
import { expect, test } from "vitest";
import { ANN_AND_BEN, studyOf } from "../class-study.ts";

test("rows go from the shortest to the longest, with every reading", () => {
  const { rows, table, measurers, text } = readingsFigure(ANN_AND_BEN, "cm");
  expect(rows.map(({ subject }) => subject)).toEqual(["tom", "mia", "ana", "leo"]);
  expect(measurers).toEqual(["Ann", "Ben"]);
  expect(rows[0]?.readings).toEqual([
    { measurer: 0, mm: 410 },
    { measurer: 0, mm: 412 },
    { measurer: 1, mm: 420 },
    { measurer: 1, mm: 424 },
  ]);
  // (410 + 412 + 420 + 424) / 4 = 416.5
  expect(table.rows[0]).toEqual(["tom", "41.0, 41.2", "42.0, 42.4", "41.65"]);
  // 424 - 410
  expect(text.description).toContain("The readings of tom lie farthest apart, by 1.40 cm.");
  expect(text.title).toBe("Readings of the torso length by subject");
  expect(text.sample).toBe("4 subjects, 2 measurers, 16 readings");
  expect(text.caveat).toContain("Every cell has a reading");
});

test("cells without a reading are told, and a subject without any has no row", () => {
  const [reading] = studyOf({ mia: { Ann: [430] } }).readings;
  const study = createStudy({
    readings: reading === undefined ? [] : [reading],
    missing: [{ subject: "leo", measurer: "Ann", repeat: 1, because: "left-empty" }],
  });
  const { rows, text, table } = readingsFigure(study, "in");
  expect(rows.map(({ subject }) => subject)).toEqual(["mia"]);
  expect(text.caveat).toContain("1 cell without a reading or with one set aside is not drawn");
  expect(text.title).toBe("Readings by subject");
  // 430 / 25.4 = 16.929
  expect(table.rows).toEqual([["mia", "16.93", "16.929"]]);
});

test("refuses another unit", () => {
  const study = createStudy({
    readings: [{ subject: "mia", measurer: "Ann", repeat: 1, mm: millimetres(430) }],
  });
  expect(() => readingsFigure(study, "mm" as "cm")).toThrow('"cm" or "in"');
});
