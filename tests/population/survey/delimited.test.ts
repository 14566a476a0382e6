import { describe, expect, test } from "vitest";
import { detectSeparator, readDelimited } from "../../../packages/population/src/survey/delimited.ts";

const texts = (text: string, separator: "," | ";" | "\t" = ",") =>
  readDelimited(text, separator).rows.map((row) => row.map((cell) => cell.text));

describe("readDelimited", () => {
  test("parts cells and lines, whatever ends a line", () => {
    const expected = [
      ["a", "b"],
      ["1", "2"],
    ];
    for (const end of ["\n", "\r\n", "\r"]) {
      expect(texts(`a,b${end}1,2`)).toEqual(expected);
      expect(texts(`a,b${end}${end}1,2${end}`)).toEqual(expected);
    }
    expect(texts("\uFEFFa;b\n1;2", ";")).toEqual(expected);
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

  test("does not glue to a quoted cell what follows it", () => {
    expect(texts('"82"5,"91" \n')).toEqual([['"82"5', "91 "]]);
  });

  test("tells line and column of each cell, also behind a quoted line end", () => {
    const { rows } = readDelimited('ab,"c\nd",e\nf,g', ",");
    expect(rows[0]?.map(({ line, column }) => [line, column])).toEqual([
      [1, 1],
      [1, 4],
      [2, 4],
    ]);
    expect(rows[1]?.map(({ line, column }) => [line, column])).toEqual([
      [3, 1],
      [3, 3],
    ]);
  });

  test("stops at a quotation mark that is never closed, and says where", () => {
    const { rows, openQuote } = readDelimited('a,b\n1,"2\n3,4', ",");
    expect(rows).toHaveLength(1);
    expect(openQuote).toEqual({ line: 2, column: 3 });
  });
});

test("the separator is the one that the line of names holds most of", () => {
  expect(detectSeparator("a,b;c,d\n1;2;3;4")).toBe(",");
  expect(detectSeparator("a;b;c\n1,5;2,5;3,5")).toBe(";");
  expect(detectSeparator("a\tb\n")).toBe("\t");
  expect(detectSeparator('"a;b;c;d",e')).toBe(",");
  expect(detectSeparator("alone")).toBe(",");
});
