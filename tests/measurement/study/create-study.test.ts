import { createStudy } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { expect, test } from "vitest";

const reading = (subject: string, measurer: string, repeat: number, mm: number) => ({
  subject,
  measurer,
  repeat,
  mm: millimetres(mm),
});

test("cells that nobody mentions are missing, and nobody is dropped", () => {
  const study = createStudy({
    subjects: ["leo", "mia"],
    measurers: ["Ann", "Ben"],
    readings: [reading("mia", "Ann", 2, 432)],
    missing: [{ subject: "mia", measurer: "Ann", repeat: 1, because: "left-empty" }],
    setAside: [{ ...reading("mia", "Ben", 1, 4320), code: "study-reading-impossible" }],
  });
  expect(study.subjects).toEqual(["leo", "mia"]);
  expect(study.repeats).toBe(2);
  expect(study.missing.map((cell) => [cell.subject, cell.measurer, cell.repeat, cell.because])).toEqual([
    ["mia", "Ann", 1, "left-empty"],
    ["leo", "Ann", 1, "not-in-data"],
    ["leo", "Ann", 2, "not-in-data"],
    ["leo", "Ben", 1, "not-in-data"],
    ["leo", "Ben", 2, "not-in-data"],
    ["mia", "Ben", 2, "not-in-data"],
  ]);
});

test("refuses what is no study", () => {
  expect(() => createStudy({ readings: [reading("a", "b", 0, 432)] })).toThrow(InvalidArgumentError);
  expect(() => createStudy({ readings: [reading("a", "b", 1, 0)] })).toThrow(InvalidArgumentError);
  expect(() => createStudy({ readings: [reading("a", "b", 1, 432), reading("a", "b", 1, 433)] })).toThrow(
    "one entry for each cell",
  );
  expect(() => createStudy({ readings: [reading("a", "b", 2_000_000, 432)] })).toThrow("1000000 cells");
});

test("a second reading of a cell may be set aside", () => {
  const study = createStudy({
    readings: [reading("a", "b", 1, 432)],
    setAside: [{ ...reading("a", "b", 1, 433), code: "study-cell-repeated" }],
  });
  expect(study.missing).toEqual([]);
});
