import { createStudy, parseStudy, safeDigitPreference } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const digitsOf = (text: string) => unwrap(safeDigitPreference(parseStudy(text))).all;
const table = (values: readonly string[], header = "subject,A (cm)") =>
  [header, ...values.map((value, index) => `s${index},${value}`)].join("\n");

test("chi-square and index, against chisq.test of R 4.2.2", () => {
  // Counts of the digits 0 to 9; χ² and its probability printed by chisq.test(c(30, 8, 12, 9, 11, 26, 7, 10, 13, 14)).
  const counts = [30, 8, 12, 9, 11, 26, 7, 10, 13, 14];
  const values = counts.flatMap((count, digit) =>
    Array.from({ length: count }, (_, i) => `${40 + (i % 8)}.${digit}`),
  );
  const [digits] = digitsOf(table(values));
  expect(digits?.counts).toEqual(counts);
  expect(digits?.chiSquare).toBeCloseTo(38.57142857142857, 11);
  expect(digits?.degreesOfFreedom).toBe(9);
  expect(digits?.pValue).toBeCloseTo(1.376152737116805e-5, 15);
  expect(digits?.designEffect).toBe(1);
  // 100 √(38.571… / (140 · 9)), and χ² is 270/7.
  expect(digits?.index).toBeCloseTo(100 * Math.sqrt(270 / 7 / 1260), 10);
});

describe("which digits are counted", () => {
  test("those at the finest step of the unit: a whole number among decimals ends in 0", () => {
    const [digits] = digitsOf(table(["43.2", "44", "45.7", "46.70"]));
    // The finest step is a tenth of a millimetre, of which 46.70 alone shows a digit: all end in 0.
    expect(digits).toMatchObject({ unit: "cm", stepMm: 0.1, counts: [4, 0, 0, 0, 0, 0, 0, 0, 0, 0] });
    expect(digitsOf(table(["43.2", "44", "45.7"]))[0]?.counts).toEqual([1, 0, 1, 0, 0, 0, 0, 1, 0, 0]);
  });

  test("whole units", () => {
    expect(digitsOf(table(["430", "435", "440", "441"], "subject,A (mm)"))[0]?.counts).toEqual([
      2, 1, 0, 0, 0, 1, 0, 0, 0, 0,
    ]);
  });

  test("fractions of an inch have as many digits as parts", () => {
    const [digits] = digitsOf(table(["17 3/8", "17 1/2", "18", "18 1/4"], "subject,A (in)"));
    expect(digits).toMatchObject({ unit: "in", stepMm: 3.175, degreesOfFreedom: 7 });
    expect(digits?.counts).toEqual([1, 0, 1, 1, 1, 0, 0, 0]);
  });

  test("each unit for itself", () => {
    expect(
      digitsOf(table(["43.2 cm", "17.5 in"], "subject,A")).map(({ unit, readings }) => [unit, readings]),
    ).toEqual([
      ["cm", 1],
      ["in", 1],
    ]);
  });
});

test("measurers are told apart, at the step of the whole study", () => {
  const { perMeasurer } = unwrap(
    safeDigitPreference(parseStudy("subject,A (cm),B (cm)\nmia,43.2,43\nleo,48.7,49\n")),
  );
  expect(perMeasurer.map(({ measurer, digits }) => [measurer, digits[0]?.counts])).toEqual([
    ["A", [0, 0, 1, 0, 0, 0, 0, 1, 0, 0]],
    ["B", [2, 0, 0, 0, 0, 0, 0, 0, 0, 0]],
  ]);
});

test("readings of one subject that share a digit count as the one subject they are", () => {
  // Ten subjects, each with four readings that end in the subject's own digit: as if read once each, but for n − 1.
  const rows = Array.from(
    { length: 10 },
    (_, i) => `s${i},${Array.from({ length: 4 }, () => `4${i}.${i < 4 ? 0 : i}`).join(",")}`,
  );
  const [digits] = digitsOf(["subject,A1 (cm),A2 (cm),A3 (cm),A4 (cm)", ...rows].join("\n"));
  // Σ over subjects of Σ over digits (count − 4/10)² = 10 · (3.6² + 9 · 0.4²) = 144, over 40 · 9/10, times 10/9.
  expect(digits?.designEffect).toBeCloseTo((144 / 36) * (10 / 9), 12);
});

test("readings that never were text are counted as unknown", () => {
  const reading = { subject: "mia", measurer: "A", repeat: 1, mm: millimetres(432) };
  expect(safeDigitPreference(createStudy({ readings: [reading] })).issues[0]?.code).toBe("digits-unknown");
  const written = { ...reading, repeat: 2, unit: "cm" as const, stepMm: millimetres(1) };
  expect(unwrap(safeDigitPreference(createStudy({ readings: [reading, written] }))).unknown).toBe(1);
});

test("few readings are said to be few", () => {
  expect(safeDigitPreference(parseStudy(table(["43.2"]))).issues[0]).toMatchObject({
    code: "digits-few",
    facts: { count: 1, classes: 10 },
  });
});
