import { parseStudy, safePrecision } from "@tapewise/measurement";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const study = parseStudy(
  "subject,A1 (mm),A2 (mm),B1 (mm),B2 (mm)\nmia,430,434,440,436\nleo,480,480,482,486\n",
);

test("each subject by hand", () => {
  const { perSubject } = unwrap(safePrecision(study));
  // mia: cells 432 and 438, s² 8 and 8: sr² = 8, sd² = 2 · 2 · 3² = 36, sL² = (36 − 8) / 2.
  expect(perSubject[0]).toMatchObject({ subject: "mia", measurers: 2, readings: 4, meanMm: 435 });
  expect((perSubject[0]?.repeatabilityMm ?? 0) ** 2).toBeCloseTo(8, 12);
  expect((perSubject[0]?.betweenMm ?? 0) ** 2).toBeCloseTo(14, 12);
  expect((perSubject[0]?.reproducibilityMm ?? 0) ** 2).toBeCloseTo(22, 12);
  // leo: cells 480 and 484, s² 0 and 8: sr² = 4, sd² = 16, sL² = 6.
  expect((perSubject[1]?.reproducibilityMm ?? 0) ** 2).toBeCloseTo(10, 12);
});

test("unequal cells by hand", () => {
  // mia: A 430 434, B 438. sr² = 8; n̄ = (3 − 5/3) / 1 = 4/3; mean 434; sd² = 2 · 2² + 4² = 24; sL² = 16 / (4/3).
  const { betweenMm, perSubject } = unwrap(
    safePrecision(parseStudy("subject,A1 (mm),A2 (mm),B1 (mm)\nmia,430,434,438\nleo,480,,\n")),
  );
  expect(betweenMm ** 2).toBeCloseTo(12, 12);
  expect(perSubject[1]).toEqual({ subject: "leo", measurers: 1, readings: 1, meanMm: 480 });
});

test("a negative variance between measurers is 0", () => {
  const { betweenMm, repeatability, reproducibilityMm } = unwrap(
    safePrecision(parseStudy("subject,A1 (mm),A2 (mm),B1 (mm),B2 (mm)\nmia,430,440,431,439\n")),
  );
  expect(betweenMm).toBe(0);
  expect(reproducibilityMm).toBe(repeatability.value);
});

test("limits are a factor times the standard deviations", () => {
  const standard = unwrap(safePrecision(study));
  expect(standard.repeatabilityLimitMm).toBeCloseTo(2.8 * Math.sqrt(6), 12);
  expect(standard.reproducibilityLimitMm).toBeCloseTo(2.8 * 4, 12);
  const exact = unwrap(safePrecision(study, { limitFactor: 1.96 * Math.SQRT2 }));
  expect(exact.repeatabilityLimitMm).toBeCloseTo(1.96 * Math.SQRT2 * Math.sqrt(6), 12);
});

describe("screening", () => {
  const quiet = ["s1", "s2", "s3", "s4", "s5", "s6"].map(
    (name, i) => `${name},${430 + i},${431 + i},${429 + i},${430 + i},${431 + i},${432 + i}`,
  );
  const header = "subject,A1 (mm),A2 (mm),B1 (mm),B2 (mm),C1 (mm),C2 (mm)";

  test("finds nothing where nothing is", () => {
    const outcome = safePrecision(parseStudy([header, ...quiet].join("\n")));
    expect(outcome.issues).toEqual([]);
  });

  test("finds cells that scatter, one after the other, and leaves them in", () => {
    const outcome = safePrecision(
      parseStudy([header, ...quiet, "s7,436,466,435,436,437,436", "s8,437,438,436,516,437,438"].join("\n")),
    );
    const precision = unwrap(outcome);
    expect(precision.variances.map(({ kind, subject, measurer }) => [kind, subject, measurer])).toEqual([
      ["outlier", "s8", "B"],
      ["outlier", "s7", "A"],
    ]);
    // 18 + 3 cells of s² 0.5, of which one in s7 and two in s8, and two large ones: 30² / 2 and 80² / 2.
    expect(precision.repeatability.value ** 2).toBeCloseTo((22 * 0.5 + 450 + 3200) / 24, 9);
    expect(outcome.issues.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["precision-variance-outlying", "precision-variance-outlying"]),
    );
  });

  test("finds a mean apart from those of the other measurers", () => {
    const many = "subject,A (mm),B (mm),C (mm),D (mm),E (mm),E2 (mm)";
    const outcome = safePrecision(
      parseStudy(`${many}\nmia,430,431,430,432,490,491\nleo,470,473,471,475,472,473\n`),
    );
    const precision = unwrap(outcome);
    expect(precision.means.map(({ kind, subject, measurer }) => [kind, subject, measurer])).toEqual([
      ["outlier", "mia", "E"],
    ]);
    expect(outcome.issues.map(({ code }) => code)).toEqual(["precision-mean-outlying"]);
  });
});

test.each([
  ["no repeats", "subject,A (mm),B (mm)\nmia,430,434\n", "no measurer read a subject twice"],
  ["one measurer", "subject,A1 (mm),A2 (mm)\nmia,430,434\n", "no subject was read by two measurers"],
])("%s do not suffice", (_, text, needed) => {
  const [issue] = safePrecision(parseStudy(text)).issues;
  expect([issue?.code, issue?.facts.needed]).toEqual(["precision-unknown", needed]);
});

test("options that are none are refused", () => {
  expect(() => safePrecision(study, { limitFactor: 0 })).toThrow(InvalidArgumentError);
  expect(() => safePrecision(study, { confidence: 0 })).toThrow(InvalidArgumentError);
});
