import { fc, test as property } from "@fast-check/vitest";
import { type Row, readDelimitedText, type Separator } from "@tapewise/tables";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";

const cellsOf = (rows: readonly Row[]): string[][] =>
  rows.flatMap((row) => (row.kind === "cells" ? [row.cells.map((cell) => cell.text)] : []));

const quote = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const separators = fc.constantFrom<Separator>(",", ";", "\t");
const tricky = fc.string({
  unit: fc.constantFrom("a", "9", "-", " ", ",", ";", "\t", '"', "\n", "\r\n", "½"),
  maxLength: 8,
});
const table = fc.array(fc.array(tricky, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 5 });

describe("against csv-parse, an independent reader of RFC 4180", () => {
  property.prop([table, separators, fc.constantFrom("\n", "\r\n")])(
    "quoted tables are read alike",
    (rows, separator, end) => {
      // A first cell that begins with # is a remark here, and a line without text is blank.
      const text = rows.map((row) => row.map(quote).join(separator)).join(end) + end;
      const theirs = parse(text, { delimiter: separator, relax_column_count: true, record_delimiter: end });
      expect(cellsOf(readDelimitedText(text, separator).rows)).toEqual(
        theirs.filter((row) => row.some((cell) => cell.trim() !== "")),
      );
      expect(readDelimitedText(text, separator).quoteFaults).toEqual([]);
    },
  );

  property.prop([
    fc.array(
      fc.array(
        fc.string({ unit: fc.constantFrom("a", "9", "-", "½", "'", "."), minLength: 1, maxLength: 6 }),
        { minLength: 1, maxLength: 4 },
      ),
      {
        minLength: 1,
        maxLength: 5,
      },
    ),
    separators,
  ])("plain tables are read alike", (rows, separator) => {
    const text = rows.map((row) => row.join(separator)).join("\n");
    expect(cellsOf(readDelimitedText(text, separator).rows)).toEqual(
      parse(text, { delimiter: separator, relax_column_count: true }),
    );
  });
});

test("cells know their line and column", () => {
  const { rows } = readDelimitedText('a,"b\r\nc",d\n\n"x""y",z', ",");
  expect(rows).toEqual([
    {
      kind: "cells",
      line: 1,
      cells: [
        { text: "a", line: 1, column: 1 },
        { text: "b\r\nc", line: 1, column: 3 },
        { text: "d", line: 2, column: 4 },
      ],
    },
    { kind: "blank", line: 3 },
    {
      kind: "cells",
      line: 4,
      cells: [
        { text: 'x"y', line: 4, column: 1 },
        { text: "z", line: 4, column: 8 },
      ],
    },
  ]);
});

test("a byte order mark takes no column", () => {
  const { rows } = readDelimitedText("\uFEFFa,b", ",");
  expect(rows).toEqual([
    {
      kind: "cells",
      line: 1,
      cells: [
        { text: "a", line: 1, column: 1 },
        { text: "b", line: 1, column: 3 },
      ],
    },
  ]);
});

test("lines that begin with # are cells where there are no remarks", () => {
  const { rows } = readDelimitedText('#1,x\n"# id: 2",y', ",", { remarks: false });
  expect(cellsOf(rows)).toEqual([
    ["#1", "x"],
    ["# id: 2", "y"],
  ]);
});

test("a cell whose marks do not fit is told as it was written, and which mark is at fault", () => {
  expect(readDelimitedText('x,"8""2"5,c\n"91,d', ",").quoteFaults).toEqual([
    { kind: "early", line: 1, column: 3, written: '"8""2"5' },
    { kind: "open", line: 2, column: 1, written: '"91' },
  ]);
});

test("remarks are kept whole, separators and all", () => {
  const { rows } = readDelimitedText('# maker: A, B\n"# note: C, D",\n#5,x', ",");
  expect(rows).toEqual([
    { kind: "remark", line: 1, text: "# maker: A, B" },
    { kind: "remark", line: 2, text: "# note: C, D" },
    { kind: "remark", line: 3, text: "#5,x" },
  ]);
});

describe("quotation marks without a partner", () => {
  test.each([
    ['"a,b', [["a", "b"]], [[1, 1]]],
    [
      'x,"a\ny,"b"\nz,c',
      [
        ["x", "a"],
        ["y", "b"],
        ["z", "c"],
      ],
      [[1, 3]],
    ],
    ['x,"a"b,c', [["x", "ab", "c"]], [[1, 3]]],
    ['15",16"', [['15"', '16"']], []],
    [
      '"a\n"b\n"c',
      [["a"], ["b"], ["c"]],
      [
        [1, 1],
        [2, 1],
        [3, 1],
      ],
    ],
  ])("%j", (text, cells, faults) => {
    const read = readDelimitedText(text, ",");
    expect(cellsOf(read.rows)).toEqual(cells);
    expect(read.quoteFaults.map(({ line, column }) => [line, column])).toEqual(faults);
  });

  test("cost no more than others", () => {
    const started = performance.now();
    readDelimitedText('x,"a\n'.repeat(200_000), ",");
    readDelimitedText('"'.repeat(999_999), ",");
    readDelimitedText('",'.repeat(500_000), ",");
    readDelimitedText(`"${'""\n'.repeat(300_000)}`, ",");
    expect(performance.now() - started).toBeLessThan(5000);
  });
});
