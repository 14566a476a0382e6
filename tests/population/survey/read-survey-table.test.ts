import { expect, test } from "vitest";
import { readSurveyTable } from "../../../packages/population/src/survey/read-survey-table.ts";

const texts = (text: string): string[][] =>
  readSurveyTable(text, ",").rows.map((row) => row.map((cell) => cell.text));

test("lines without text are left out, lines that begin with # are people", () => {
  expect(texts("name,waist\n\n#1,82\n , \n#2,91")).toEqual([
    ["name", "waist"],
    ["#1", "82"],
    ["#2", "91"],
  ]);
});

test("does not glue to a quoted cell what follows it", () => {
  expect(texts('"82"5,"91" \n')).toEqual([['"82"5', "91 "]]);
});

test("tells line and column of each cell, also behind a quoted line end", () => {
  const { rows } = readSurveyTable('ab,"c\nd",e\nf,g', ",");
  expect(rows.map((row) => row.map(({ line, column }) => [line, column]))).toEqual([
    [
      [1, 1],
      [1, 4],
      [2, 4],
    ],
    [
      [3, 1],
      [3, 3],
    ],
  ]);
});

test("stops at the line of a quotation mark that is never closed, and says where", () => {
  const { rows, openQuote } = readSurveyTable('a,b\n1,"2\n3,4', ",");
  expect(rows).toHaveLength(1);
  expect(openQuote).toEqual({ line: 2, column: 3 });
});
