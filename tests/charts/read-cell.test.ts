import { describe, expect, test } from "vitest";
import { readCell } from "../../packages/charts/src/read-cell.ts";

const OPEN = Number.POSITIVE_INFINITY;

/** What a cell says in millimetres: `[from, to]`, or the nominal length. */
function said(text: string, unit: "cm" | "in" | "none" = "cm"): unknown[] {
  const outcome = readCell(text, unit === "none" ? [] : [unit]);
  if (!outcome.ok || outcome.issues.length > 0) return outcome.issues.map((issue) => issue.code);
  return outcome.value.map(({ from, to, nominal }) =>
    nominal === undefined ? [from?.mm ?? -OPEN, to?.mm ?? OPEN] : nominal.mm,
  );
}

describe("ranges", () => {
  test.each([
    "-",
    "–",
    "—",
    "‒",
    "−",
    "‐",
    "‑",
    "―",
    "~",
    "〜",
    "～",
    "…",
    "...",
    " - ",
    " – ",
    " to ",
    " TO ",
  ])("38%s43 is a range", (between) => {
    expect(said(`38${between}43`)).toEqual([[380, 430]]);
  });

  test.each([
    ["from 38 to 43", [380, 430]],
    ["between 38 and 43", [380, 430]],
    ["38to43", [380, 430]],
    ["38,5-43,5", [385, 435]],
    ["38.5-43.5", [385, 435]],
    ["38 cm - 43 cm", [380, 430]],
    ["38-43 cm", [380, 430]],
    ["38 cm - 43", [380, 430]],
    ["43-43", [430, 430]],
    ["\u00a038\u2009–\u200943\u00a0", [380, 430]],
  ])("%s", (text, range) => {
    expect(said(text)).toEqual([range]);
  });

  // 15 in = 381 mm, 16 1/2 in = 419.1 mm, 17 in = 431.8 mm, 18 3/8 in = 466.725 mm by 25.4 mm each.
  test.each([
    ["15-16 1/2", [381, 419.1]],
    ["15 1/2 - 17", [393.7, 431.8]],
    ["15½–17", [393.7, 431.8]],
    ['15" - 17"', [381, 431.8]],
    ["15-1/2-17", [393.7, 431.8]],
    ["17-18-3/8", [431.8, 466.725]],
    ["18-3/8", 466.725],
    ["18–3/8", 466.725],
    ["18-⅜", 466.725],
    ["18 3/8", 466.725],
  ])("%s in an inch column", (text, range) => {
    expect(said(text, "in")).toEqual([range]);
  });

  test("feet and inches are one length", () => {
    // 5 ft 2 in = 62 in = 1574.8 mm; 5 ft 6 in = 66 in = 1676.4 mm.
    expect(said(`5'2"-5'6"`, "in")).toEqual([[1574.8, 1676.4]]);
  });
});

describe("open ends", () => {
  test.each([
    "<104",
    "≤104",
    "<=104",
    "up to 104",
    "Up to 104 cm",
    "under 104",
    "max. 104",
    "104 or less",
    "to 104",
  ])("%s has no lower end", (text) => {
    expect(said(text)).toEqual([[-OPEN, 1040]]);
  });

  test.each([
    "48+",
    "48+ cm",
    "48 cm+",
    ">48",
    "≥48",
    ">= 48",
    "over 48",
    "from 48",
    "48 and up",
    "48 or more",
    "min 48",
  ])("%s has no upper end", (text) => {
    expect(said(text)).toEqual([[480, OPEN]]);
  });

  test.each(["38-", "-43", "– 43", "38 to"])("%s may mean two things and is not read", (text) => {
    expect(said(text)).toEqual(["chart-cell-half-range"]);
  });
});

describe("nominal lengths and silence", () => {
  test.each([
    ["46", 460],
    ["46 cm", 460],
    ["46,5", 465],
    ["460 mm", 460],
  ])("%s is one length", (text, mm) => {
    expect(readCell(text, ["cm"])).toMatchObject({ ok: true, value: [{ nominal: { mm } }] });
  });

  test.each(["", "  ", "-", "–", "---", "n/a", "N/A", "na", "?", "none"])("“%s” states nothing", (text) => {
    expect(readCell(text, ["cm"])).toEqual({ ok: true, value: [], issues: [] });
  });
});

describe("two statements in one cell", () => {
  test.each([
    "38-43 cm / 15-17 in",
    "38-43 cm/15-17 in",
    "38-43 cm (15-17 in)",
    "38-43 cm | 15-17 in",
    "38-43 cm\n15-17 in",
  ])("%j", (text) => {
    expect(said(text, "none")).toEqual([
      [380, 430],
      [381, 431.8],
    ]);
  });

  test("the second one may have another unit than the header", () => {
    expect(said("38-43 cm / 15-17 in", "cm")).toEqual(said("38-43 / 15-17 in", "cm"));
    expect(said("38-43 / 15-17 in", "cm")).toEqual([
      [380, 430],
      [381, 431.8],
    ]);
  });

  test("a fraction's slash parts nothing", () => {
    expect(said("15 1/2-17 3/4", "in")).toEqual([[393.7, 450.85]]);
  });

  test("what can be read is kept beside what cannot", () => {
    const outcome = readCell("38-43 cm / about 16", []);
    expect(outcome).toMatchObject({ ok: true, value: [{ from: { mm: 380 } }] });
    expect(outcome.issues.length).toBeGreaterThan(0);
  });
});

describe("what cannot be read", () => {
  test.each([
    ["43-38", "chart-range-reversed"],
    ["1-2-3", "chart-cell-unreadable"],
    ["<38-43", "chart-cell-unreadable"],
    ["38-43 kg", "length-unit-wrong-kind"],
    ["small", "length-not-a-number"],
    ["-0", "chart-cell-half-range"],
    ["0", "length-zero"],
    ["NaN", "length-not-a-number"],
    ["Infinity", "length-not-a-number"],
    ["1/0", "length-fraction-impossible"],
    [`${"9".repeat(201)}`, "chart-text-too-long"],
  ])("%s", (text, code) => {
    expect(said(text)).toContain(code);
  });

  test("a length without a unit anywhere", () => {
    expect(said("38-43", "none")).toEqual(["length-no-unit", "length-no-unit"]);
  });

  test("ends are never swapped: the issue shows them as they were", () => {
    const outcome = readCell("43-38", ["cm"]);
    expect(outcome.issues[0]).toMatchObject({
      received: "43-38 cm",
      message: "the range 43-38 cm begins above its end",
    });
  });

  test("a cell's own unit counts, and the difference from its header is told", () => {
    const outcome = readCell("15-17 in", ["cm"]);
    expect(outcome).toMatchObject({ ok: true, value: [{ from: { mm: 381 }, to: { mm: 431.8 } }] });
    expect(outcome.issues).toMatchObject([{ code: "chart-cell-unit-differs", severity: "warning" }]);
  });

  test("a header may promise both units", () => {
    expect(readCell("38-43 / 15-17", ["cm", "in"])).toMatchObject({
      issues: [],
      value: [{ from: { mm: 380 } }, { from: { mm: 381 } }],
    });
  });
});

test("what was stated is kept as written, with the unit", () => {
  const stated = (text: string): unknown => {
    const outcome = readCell(text, ["cm"]);
    return outcome.ok ? outcome.value.map((statement) => statement.stated) : outcome.issues;
  };
  expect(stated(" 38 –43 ")).toEqual(["38 –43 cm"]);
  expect(stated("38-43 cm")).toEqual(["38-43 cm"]);
  expect(stated("48+")).toEqual(["48+ cm"]);
});
