import { parseStudy, safeTechnicalError } from "@tapewise/measurement";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const codes = (text: string): string[] => safeTechnicalError(parseStudy(text)).issues.map(({ code }) => code);

describe("by hand", () => {
  // Two measurers, two readings each. Cells (mean; squares): mia A 432; 8, B 438; 8. leo A 480; 0, B 484; 8.
  const study = parseStudy(
    "subject,A1 (mm),A2 (mm),B1 (mm),B2 (mm)\nmia,430,434,440,436\nleo,480,480,482,486\n",
  );
  const { perMeasurer, intra, inter, total, summedTotalMm } = unwrap(safeTechnicalError(study));

  test("within measurers", () => {
    expect(
      perMeasurer.map(({ measurer, tem }) => [measurer, tem.mm.value ** 2, tem.degreesOfFreedom]),
    ).toEqual([
      ["A", expect.closeTo(4, 12), 2],
      ["B", expect.closeTo(8, 12), 2],
    ]);
    expect((intra?.mm.value ?? 0) ** 2).toBeCloseTo(24 / 4, 12);
    // Readings 430 434 440 436 480 480 482 486: mean 458.5.
    expect(intra?.meanMm).toBe(458.5);
    expect(intra?.relative.value).toBeCloseTo((100 * Math.sqrt(6)) / 458.5, 12);
    // Squares about 458.5: 812.25 600.25 342.25 506.25 462.25 462.25 552.25 756.25, together 4494.
    expect(intra?.reliability).toBeCloseTo(1 - 6 / (4494 / 7), 12);
    expect(intra?.method).toBe("chi-square");
  });

  test("between measurers: means 432 and 438, 480 and 484", () => {
    // About the subjects' means: 9 + 9 + 4 + 4 with 2 degrees of freedom.
    expect((inter?.mm.value ?? 0) ** 2).toBeCloseTo(13, 12);
    expect(inter?.degreesOfFreedom).toBe(2);
    expect(inter?.method).toBe("graybill-wang");
  });

  test("altogether: half of the error within is in the means already", () => {
    expect((total?.mm.value ?? 0) ** 2).toBeCloseTo(13 + 6 / 2, 12);
    expect((summedTotalMm ?? 0) ** 2).toBeCloseTo(13 + 6, 12);
  });
});

describe("missing cells", () => {
  test("change the weights and drop nobody who can tell something", () => {
    // mia: A read twice (d = 4), B never. leo: A once, B once, 6 apart. ana: once.
    const study = parseStudy("subject,A1 (mm),A2 (mm),B1 (mm)\nmia,430,434,\nleo,480,,486\nana,455,,\n");
    const outcome = safeTechnicalError(study);
    const { intra, inter, total } = unwrap(outcome);
    expect((intra?.mm.value ?? 0) ** 2).toBeCloseTo(16 / 2, 12);
    expect(intra?.subjects).toEqual(["mia"]);
    expect((inter?.mm.value ?? 0) ** 2).toBeCloseTo(36 / 2, 12);
    expect(inter?.subjects).toEqual(["leo"]);
    // Leo's cells hold one reading each, so that all of the error within is in them.
    expect(total?.mm.value).toBeCloseTo(inter?.mm.value ?? 0, 12);
    expect(outcome.issues.map(({ code, received }) => [code, received])).toEqual([
      ["tem-subject-unused", "ana"],
    ]);
  });

  test("measurers who share no subject are kept apart", () => {
    // A and B share mia, C and D share leo: two lasting differences, nothing left that changes.
    const study = parseStudy("subject,A (mm),B (mm),C (mm),D (mm)\nmia,430,434,,\nleo,,,480,486\n");
    const { inter } = unwrap(safeTechnicalError(study));
    expect((inter?.mm.value ?? 0) ** 2).toBeCloseTo((16 / 2 + 36 / 2) / 2, 12);
    expect(inter?.degreesOfFreedom).toBe(2);
  });
});

describe("what cannot be told is said", () => {
  test.each<[string, string, string[]]>([
    ["nobody read twice", "subject,A (mm)\nmia,430\nleo,480\n", ["tem-unknown"]],
    ["one measurer", "subject,A1 (mm),A2 (mm)\nmia,430,434\n", ["tem-inter-unknown"]],
    ["no repeats", "subject,A (mm),B (mm)\nmia,430,434\nleo,480,486\n", ["tem-intra-unknown"]],
    [
      "readings all alike",
      "subject,A1 (mm),A2 (mm)\nmia,430,430\nleo,480,480\n",
      ["tem-zero", "tem-inter-unknown"],
    ],
  ])("%s", (_, text, expected) => {
    expect(codes(text)).toEqual(expected);
  });

  test("without scatter there is no reliability, and no NaN", () => {
    const { intra } = unwrap(safeTechnicalError(parseStudy("subject,A1 (mm),A2 (mm)\nmia,430,430\n")));
    expect(intra?.reliability).toBeUndefined();
    expect(intra?.mm).toEqual({ value: 0, lower: 0, upper: 0 });
  });
});

test("a confidence that is none is refused", () => {
  const study = parseStudy("subject,A1 (mm),A2 (mm)\nmia,430,434\n");
  expect(() => safeTechnicalError(study, { confidence: 95 })).toThrow(InvalidArgumentError);
});
