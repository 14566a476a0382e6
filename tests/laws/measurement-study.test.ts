import { fc, test } from "@fast-check/vitest";
import { parseStudy, type Study, safeParseStudy } from "@tapewise/measurement";
import { describe, expect } from "vitest";

const MEASURERS = ["Ann", "Ben O’Hara", "x"];
const REPEATS = 2;

/** Tenths of a centimetre, or nothing: a row for each subject, a place for each measurer and repeat. */
const grids = fc.array(
  fc.array(fc.option(fc.integer({ min: 380, max: 560 }), { freq: 3 }), { minLength: 6, maxLength: 6 }),
  { minLength: 1, maxLength: 8 },
);
type Grid = readonly (readonly (number | null)[])[];
const ways = fc.record({
  separator: fc.constantFrom(",", ";", "\t"),
  end: fc.constantFrom("\n", "\r\n", "\r"),
  comma: fc.boolean(),
  missing: fc.constantFrom("", "-", "NA", "n/a"),
  unitInCell: fc.boolean(),
});
type Way = typeof ways extends fc.Arbitrary<infer T> ? T : never;

const cellsOf = (grid: Grid) =>
  grid.flatMap((row, subject) =>
    row.map((tenths, place) => ({
      subject: `crew ${subject + 1}`,
      measurer: MEASURERS[Math.floor(place / REPEATS)] ?? "",
      repeat: (place % REPEATS) + 1,
      tenths,
    })),
  );

const write = (tenths: number | null, way: Way): string => {
  if (tenths === null) return way.missing;
  const number = (tenths / 10).toFixed(1).replace(".", way.comma ? "," : ".");
  return `"${number}${way.unitInCell ? " cm" : ""}"`;
};
const unit = (way: Way) => (way.unitInCell ? "" : " (cm)");
const lines = (rows: readonly (readonly string[])[], way: Way) =>
  rows.map((row) => row.join(way.separator)).join(way.end);

const long = (grid: Grid, way: Way): string =>
  lines(
    [
      ["subject", "measurer", "repeat", `torso-length${unit(way)}`],
      ...cellsOf(grid).map((cell) => [
        cell.subject,
        cell.measurer,
        String(cell.repeat),
        write(cell.tenths, way),
      ]),
    ],
    way,
  );
const wide = (grid: Grid, way: Way): string =>
  lines(
    [
      [
        "subject",
        ...MEASURERS.flatMap((name) => [
          `torso-length ${name} 1${unit(way)}`,
          `torso-length ${name} 2${unit(way)}`,
        ]),
      ],
      ...grid.map((row, subject) => [`crew ${subject + 1}`, ...row.map((tenths) => write(tenths, way))]),
    ],
    way,
  );
const json = (grid: Grid): string =>
  JSON.stringify({
    dimension: "torso-length",
    unit: "cm",
    readings: cellsOf(grid).map(({ tenths, ...cell }) => ({
      ...cell,
      value: tenths === null ? null : tenths / 10,
    })),
  });

const plain = (study: Study) =>
  study.readings.map(({ subject, measurer, repeat, mm }) => ({ subject, measurer, repeat, tenths: mm }));
const key = (cell: { readonly subject: string; readonly measurer: string; readonly repeat: number }) =>
  `${cell.subject}/${cell.measurer}/${cell.repeat}`;
const sorted = <T extends { readonly subject: string; readonly measurer: string; readonly repeat: number }>(
  cells: readonly T[],
) => [...cells].sort((a, b) => (key(a) < key(b) ? -1 : 1));

describe("a study that is written down", () => {
  test.prop([grids.filter((grid) => grid.flat().some((cell) => cell !== null)), ways])(
    "law: comes back from every layout, its gaps as gaps",
    (grid, way) => {
      const written = cellsOf(grid);
      for (const text of [long(grid, way), wide(grid, way), json(grid)]) {
        const study = parseStudy(text);
        expect(study.dimension).toBe("torso-length");
        expect(sorted(plain(study))).toEqual(sorted(written.filter(({ tenths }) => tenths !== null)));
        const gaps = written.filter(({ tenths }) => tenths === null).map(key);
        expect(study.missing.map(key).sort()).toEqual(gaps.sort());
        expect(study.setAside).toEqual([]);
      }
    },
  );

  test.prop([fc.string({ maxLength: 200 })])(
    "law: any text is answered, and never by an exception",
    (text) => {
      const outcome = safeParseStudy(text);
      expect(outcome.ok || outcome.issues.length > 0).toBe(true);
    },
  );

  test.prop([
    fc.array(
      fc.array(
        fc.constantFrom("subject", "A1 (cm)", "43.2", "mm", "", "-", "Ann", "1", "43 cm", '"', "[", "{"),
        { maxLength: 5 },
      ),
      { maxLength: 6 },
    ),
  ])("law: every cell of the grid is read, missing or set aside, once", (rows) => {
    const outcome = safeParseStudy(rows.map((row) => row.join(",")).join("\n"));
    if (!outcome.ok) return;
    const { subjects, measurers, repeats, readings, missing, setAside } = outcome.value;
    const once = [...readings, ...missing].map(key);
    expect(new Set(once).size).toBe(once.length);
    const all = new Set([...once, ...setAside.map(key)]);
    expect(all.size).toBe(subjects.length * measurers.length * repeats);
  });

  test.prop([grids.filter((grid) => grid.flat().some((cell) => cell !== null)), ways])(
    "law: the place of a reading is where its text stands",
    (grid, way) => {
      const text = wide(grid, way);
      const rows = text.split(/\r\n|\n|\r/);
      for (const { place, text: shown } of parseStudy(text).readings) {
        const at = rows[(place?.line ?? 0) - 1]?.slice((place?.column ?? 0) - 1);
        expect(at?.startsWith(`"${shown}"`)).toBe(true);
      }
    },
  );
});
