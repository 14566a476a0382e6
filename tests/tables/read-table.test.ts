import { readTable, type Separator } from "@tapewise/tables";
import { describe, expect, test } from "vitest";

const texts = (text: string, separator?: Separator): string[][] =>
  readTable(text, { separator }).rows.flatMap((row) =>
    row.kind === "cells" ? [row.cells.map((cell) => cell.text)] : [],
  );

describe("readTable", () => {
  test("parts cells and lines, whatever ends a line", () => {
    const expected = [
      ["a", "b"],
      ["1", "2"],
    ];
    for (const end of ["\n", "\r\n", "\r"]) {
      expect(texts(`a,b${end}1,2`)).toEqual(expected);
      expect(texts(`a,b${end}${end}1,2${end}`)).toEqual(expected);
    }
    expect(texts("\uFEFFa;b\n1;2")).toEqual(expected);
  });

  test("keeps empty cells, one behind the last separator too", () => {
    expect(texts("a,,c\n,2,")).toEqual([
      ["a", "", "c"],
      ["", "2", ""],
    ]);
    expect(texts("a,b\n1,")).toEqual([
      ["a", "b"],
      ["1", ""],
    ]);
  });

  test("reads quoted cells with separators, line ends and doubled marks in them", () => {
    expect(texts('"a, ""b""",c\n"two\nlines",2')).toEqual([
      ['a, "b"', "c"],
      ["two\nlines", "2"],
    ]);
  });

  test("takes the separator that it is told, then the one that the text names, then the one it shows", () => {
    const named = "sep=;\na,b;c\n1,5;2";
    expect(readTable(named).separator).toBe(";");
    expect(texts(named)).toEqual([
      ["a,b", "c"],
      ["1,5", "2"],
    ]);
    expect(texts(named, ",")).toEqual([
      ["a", "b;c"],
      ["1", "5;2"],
    ]);
    expect(readTable("a\tb,c\n1\t2").separator).toBe("\t");
  });

  test("a line that names the separator is no row, and the others keep their numbers", () => {
    expect(readTable("\uFEFFsep=,\r\na,b").rows).toEqual([
      {
        kind: "cells",
        line: 2,
        cells: [
          { text: "a", line: 2, column: 1 },
          { text: "b", line: 2, column: 3 },
        ],
      },
    ]);
    expect(texts("sep=,")).toEqual([["sep=", ""]]);
  });
});
