import { parseStudy, summariseStudy, tellStudy } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { ANN_AND_BEN, studyOf } from "../class-study.ts";

const sections = tellStudy(summariseStudy(ANN_AND_BEN), "cm");
const section = (id: string) => sections.find((each) => each.id === id);

test("every part has a table, a title and one sentence on what it means", () => {
  expect(sections.map(({ id }) => id)).toEqual([
    ...["technical-error", "precision", "correlation", "agreement", "detectable-change", "trend", "digits"],
  ]);
  for (const { tables, meaning, title } of sections) {
    expect(title).not.toBe("");
    expect(meaning).toMatch(/^[A-Z].*\.$/);
    expect(tables.length).toBeGreaterThan(0);
    for (const { header, rows } of tables) {
      for (const row of rows) expect(row).toHaveLength(header.length);
      expect(JSON.stringify(rows)).not.toMatch(/NaN|undefined|Infinity|null/);
    }
  }
});

test("technical errors in the unit, and in per cent", () => {
  // Squares about the means of cells: 8 + 0 + 0 + 2 + 8 + 2 + 2 + 8 = 30 mm² with 8 degrees of freedom.
  const [within] = section("technical-error")?.tables[0]?.rows ?? [];
  expect(within?.slice(0, 2)).toEqual(["within measurers", (Math.sqrt(30 / 8) / 10).toFixed(2)]);
  const [inches] = tellStudy(summariseStudy(ANN_AND_BEN), "in")[0]?.tables[0]?.rows ?? [];
  expect(inches?.[1]).toBe((Math.sqrt(30 / 8) / 25.4).toFixed(3));
});

test("measurers who agree least are named, with the direction of their habit", () => {
  expect(section("agreement")?.meaning).toMatch(/^Ann reads shorter than Ben by habit, /);
  // The mean of -10, -10, -10 and -11 mm is -1.025 cm.
  expect(section("agreement")?.tables[0]?.rows[0]?.slice(0, 3)).toEqual([
    "Ann less Ben",
    "mean difference",
    (-1.025).toFixed(2),
  ]);
});

test("the form of the correlation is given with its reason", () => {
  expect(section("correlation")?.notes.join(" ")).toContain("where the next reading may be anybody's");
  const alone = parseStudy("subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n");
  const own = tellStudy(summariseStudy(alone), "cm").find(({ id }) => id === "correlation");
  expect(own?.tables[0]?.rows.map(([name]) => name)).toEqual(["one measurer, ICC(1)"]);
});

test("a trend is told", () => {
  const rising = studyOf({
    mia: { Ann: [430, 440, 450] },
    leo: { Ann: [480, 490, 501] },
    ana: { Ann: [455, 465, 475] },
    tom: { Ann: [410, 420, 430] },
    eva: { Ann: [440, 450, 460] },
  });
  const told = tellStudy(summariseStudy(rising), "cm");
  expect(told.find(({ id }) => id === "trend")?.meaning).toMatch(/get longer by about 1\.0\d cm/);
});

test("a love of round digits is told, with the digits", () => {
  const study = studyOf(
    Object.fromEntries(Array.from({ length: 60 }, (_, k) => [`s${k}`, { Ann: [400 + 5 * (k % 17)] }])),
  );
  const own = tellStudy(summariseStudy(study), "cm").find(({ id }) => id === "digits");
  expect(own?.meaning).toContain("Some last digits are written too often (0 and 5)");
  expect(section("digits")?.meaning).toContain("No last digit");
});

test("a published limit is told where there is one", () => {
  const stature = studyOf({ mia: { Ann: [1702, 1705], Ben: [1711] } }, "stature");
  const own = tellStudy(summariseStudy(stature), "cm").find(({ id }) => id === "allowance");
  // 6 mm are allowed: 9 mm between 1702 and 1711 are more, 3 and 6 mm are not.
  expect(own?.meaning).toMatch(/^1 of 3 pairs/);
  expect(own?.notes[0]).toContain("0.60 cm");
});

test("of many pairs of measurers the ten that agree least are listed", () => {
  const measurers = ["A", "B", "C", "D", "E", "F"];
  const study = studyOf(
    Object.fromEntries(
      [430, 445, 460, 475].map((mm, s) => [
        `s${s}`,
        Object.fromEntries(measurers.map((name, m) => [name, [mm + m * m + ((s * s * (m + 2) + m) % 7)]])),
      ]),
    ),
  );
  const own = tellStudy(summariseStudy(study), "cm").find(({ id }) => id === "agreement");
  expect(own?.tables[0]?.rows).toHaveLength(10 * 3);
  // Six measurers make fifteen pairs.
  expect(own?.notes.at(-1)).toBe("The 10 pairs that agree least of 15; the other 5 are in the data.");
});

test("refuses another unit", () => {
  expect(() => tellStudy(summariseStudy(ANN_AND_BEN), "mm" as "cm")).toThrow('"cm" or "in"');
});
