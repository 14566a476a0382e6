import {
  minimalDetectableChange,
  parseStudy,
  safeComponentIcc,
  safeDigitPreference,
  safeMeasurerAgreement,
  safePrecision,
  safeRepeatTrend,
  safeTechnicalError,
  summariseStudy,
} from "@tapewise/measurement";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";

const text = [
  "subject,A1 (cm),A2 (cm),B1 (cm),B2 (cm),C1 (cm),C2 (cm)",
  "mia,43.1,43.4,43.9,43.6,43.0,43.3",
  "leo,48.0,48.1,48.4,48.9,47.8,-",
  "ana,45.5,45.2,45.9,46.1,45.2,45.6",
  "eva,41.8,42.0,42.5,42.2,41.7,410",
  "tom,50.2,50.0,50.9,50.4,50.1,49.8",
].join("\n");

test("holds what each of the functions says, at one confidence", () => {
  const study = parseStudy(text, { dimension: "torso-length" });
  const confidence = 0.9;
  const report = summariseStudy(study, { confidence });
  expect(report.size).toEqual({
    subjects: 5,
    measurers: 3,
    repeats: 2,
    readings: 28,
    missing: 1,
    setAside: 1,
  });
  expect(report.dimension).toBe("torso-length");
  const technicalError = unwrap(safeTechnicalError(study, { confidence }));
  expect(report.technicalError).toEqual(technicalError);
  expect(report.precision).toEqual(unwrap(safePrecision(study, { confidence })));
  expect(report.correlation).toEqual(unwrap(safeComponentIcc(study, { confidence })));
  expect(report.trend).toEqual(unwrap(safeRepeatTrend(study, { confidence })));
  expect(report.digits).toEqual(unwrap(safeDigitPreference(study)));
  expect(report.agreement.map(({ first, second }) => first + second)).toEqual(["AB", "AC", "BC"]);
  expect(report.agreement[1]).toEqual(
    unwrap(safeMeasurerAgreement(study, { first: "A", second: "C", confidence })),
  );
  expect(report.detectableChange).toEqual({
    sameMeasurerMm: minimalDetectableChange(technicalError.intra?.mm.value ?? 0, { confidence }),
    anyMeasurerMm: minimalDetectableChange(technicalError.total?.mm.value ?? 0, { confidence }),
  });
  expect(report.allowance).toBeUndefined();
  expect(report.issues.filter(({ severity }) => severity === "error")).toEqual([]);
});

test("says what the study cannot tell, and where", () => {
  const report = summariseStudy(
    parseStudy("subject,stature A (cm),stature B (cm)\nmia,170,171\nleo,180,182\n"),
  );
  expect(report.precision).toBeUndefined();
  expect(report.trend).toBeUndefined();
  expect(report.detectableChange.sameMeasurerMm).toBeUndefined();
  expect(report.detectableChange.anyMeasurerMm).toBeGreaterThan(0);
  expect(report.allowance?.twoMeasurers).toEqual({ pairs: 2, beyond: 2, largestMm: 20 });
  const told = report.issues.map(({ path, code }) => `${path[0]}: ${code}`);
  expect(told).toContain("technicalError: tem-intra-unknown");
  expect(told).toContain("precision: precision-unknown");
  expect(report.issues.find(({ code }) => code === "agreement-subjects-few")?.path.slice(0, 3)).toEqual([
    "agreement",
    "A",
    "B",
  ]);
});

test("a confidence that is none is refused", () => {
  expect(() => summariseStudy(parseStudy(text), { confidence: 1 })).toThrow(InvalidArgumentError);
});
