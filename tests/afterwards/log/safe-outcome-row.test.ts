import { exchangeReasons, safeOutcomeRow } from "@tapewise/afterwards";
import { describe, expect, test } from "vitest";
import { rowOf } from "./rows.ts";

const codes = (value: unknown): readonly string[] =>
  safeOutcomeRow(value).issues.map(({ code, path }) => `${code}@${path.join(".")}`);

describe("a row", () => {
  test("with everything in it comes back as it was", () => {
    const row = rowOf({
      id: "r1",
      at: "2026-05-04T09:30:00+02:00",
      person: "p1",
      product: { maker: "Invented Packs", chart: "Doily 45" },
      outcome: "exchanged",
      reason: "harness-too-short",
      exchangedFor: "L",
      estimates: { "torso-length": { mm: 436, uncertaintyMm: 0, degreesOfFreedom: 4.5 } },
    });
    expect(safeOutcomeRow(row)).toEqual({ ok: true, value: row, issues: [] });
  });

  test.each(exchangeReasons)("may say that it was exchanged because: %s", (reason) => {
    expect(codes(rowOf({ outcome: "exchanged", reason }))).toEqual([]);
  });

  test.each([
    [null, "outcome-not-an-object@"],
    [[], "outcome-not-an-object@"],
    ["x", "outcome-not-an-object@"],
    [{}, "outcome-version-unknown@v"],
    [{ v: "1" }, "outcome-version-unknown@v"],
    [{ v: 0 }, "outcome-version-unknown@v"],
    [{ v: 1.5 }, "outcome-version-unknown@v"],
    [{ v: 2, anything: "at all" }, "outcome-version-newer@v"],
    [rowOf({ id: "" }), "outcome-field-invalid@id"],
    [rowOf({ size: "x".repeat(201) }), "outcome-field-invalid@size"],
    [{ ...rowOf(), product: "Doily 45" }, "outcome-field-invalid@product"],
    [{ ...rowOf(), product: {} }, "outcome-field-missing@product.chart"],
    [{ ...rowOf(), outcome: "lost" }, "outcome-field-invalid@outcome"],
    [{ ...rowOf({ outcome: "exchanged" }), reason: "colour" }, "outcome-field-invalid@reason"],
    [rowOf({ reason: "uncomfortable" }), "outcome-kept-yet-exchanged@reason"],
    [rowOf({ exchangedFor: "L" }), "outcome-kept-yet-exchanged@exchangedFor"],
    [{ ...rowOf(), estimates: [] }, "outcome-field-invalid@estimates"],
    [{ ...rowOf(), estimates: { "torso-length": 436 } }, "outcome-field-invalid@estimates.torso-length"],
    [
      rowOf({ estimates: { "torso-length": { mm: Number.NaN, uncertaintyMm: 1 } } }),
      "outcome-field-invalid@estimates.torso-length.mm",
    ],
    [
      rowOf({ estimates: { "torso-length": { mm: 430, uncertaintyMm: -1 } } }),
      "outcome-field-invalid@estimates.torso-length.uncertaintyMm",
    ],
    [
      rowOf({
        estimates: {
          "hip-girth": { mm: 1000, uncertaintyMm: 1, degreesOfFreedom: Number.POSITIVE_INFINITY },
        },
      }),
      "outcome-field-invalid@estimates.hip-girth.degreesOfFreedom",
    ],
  ])("%j is refused: %s", (value, issue) => {
    expect(safeOutcomeRow(value).ok).toBe(false);
    expect(codes(value)).toEqual([issue]);
  });

  test("tells everything that is wrong at once", () => {
    expect(codes({ v: 1 })).toEqual([
      "outcome-field-missing@at",
      "outcome-field-missing@product",
      "outcome-field-missing@size",
      "outcome-field-missing@outcome",
    ]);
  });

  test("is not used for fields that nobody knows, and says so", () => {
    const outcome = safeOutcomeRow({
      ...rowOf({ estimates: {} }),
      notes: "x",
      exchangedfor: "L",
      product: { chart: "Doily 45", colour: "red" },
    });
    expect(outcome.ok && outcome.value).toEqual(rowOf({ estimates: {} }));
    expect(outcome.issues.map(({ severity, path }) => `${severity} ${path.join(".")}`)).toEqual([
      "warning product.colour",
      "warning notes",
      "warning exchangedfor",
    ]);
    expect(outcome.issues[2]?.message).toContain("did you mean “exchangedFor”?");
  });
});

describe("moments", () => {
  // ISO 8601-1:2019, calendar dates; 1900 was no leap year and 2000 was one.
  test.each(["2026-05-04", "2024-02-29", "2000-02-29", "2026-05-04T23:59Z", "2026-05-04T00:00:00.125-11:30"])(
    "%s is one",
    (at) => {
      expect(codes(rowOf({ at }))).toEqual([]);
    },
  );

  test.each([
    "",
    "2026-5-4",
    "20260504",
    "2026-02-29",
    "1900-02-29",
    "2026-04-31",
    "2026-13-01",
    "2026-00-10",
    "2026-05-04T24:00Z",
    "2026-05-04T10:00",
    "2026-05-04T10:00:60Z",
    "2026-05-04 10:00Z",
    "2026-05-04Z",
    "2026-05-04\n",
  ])("%j is none", (at) => {
    expect(codes(rowOf({ at }))).toEqual(["outcome-field-invalid@at"]);
  });
});

describe("a person", () => {
  test.each([
    ["ana@example.org", "an e-mail address"],
    ["Ana <a.b@mail.example.org>", "an e-mail address"],
    // Numbers that are set aside for fiction: Ofcom's, and 555-0100 to 555-0199 of the North American plan.
    ["+44 20 7946 0018", "a phone number"],
    ["(020) 7946-0018", "a phone number"],
    ["555-0123", "a phone number"],
    ["02079460018", "a phone number"],
  ])("%s looks like %s, and is kept with a warning", (person, kind) => {
    const outcome = safeOutcomeRow(rowOf({ person }));
    expect(outcome.ok && outcome.value.person).toBe(person);
    expect(outcome.issues.map(({ code, severity, facts }) => [code, severity, facts.kind])).toEqual([
      ["outcome-person-identifying", "warning", kind],
    ]);
    expect(JSON.stringify(outcome.issues)).not.toContain(person);
  });

  test.each(["p1", "m-0042", "10023457", "7f9c24e8-3b12-4fef-91d0-000000000000", "a@b", "2026-05-04", "ana"])(
    "%s does not",
    (person) => {
      expect(codes(rowOf({ person }))).toEqual([]);
    },
  );
});

test("a length that nobody has is kept and questioned: it was written in another unit, as a rule", () => {
  const of = (mm: number) =>
    safeOutcomeRow(rowOf({ estimates: { "torso-length": { mm, uncertaintyMm: 8 } } }));
  // 43.6 cm as if it were millimetres, and a figure that is none.
  for (const mm of [43.6, 4360, 1e300]) {
    const outcome = of(mm);
    expect(outcome.ok).toBe(true);
    expect(outcome.issues.map(({ code, severity, path }) => [code, severity, path])).toEqual([
      ["outcome-estimate-implausible", "warning", ["estimates", "torso-length", "mm"]],
    ]);
  }
  expect(of(436).issues).toEqual([]);
});
