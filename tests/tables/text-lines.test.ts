import { placeOf, placesIn } from "@tapewise/tables";
import { expect, test } from "vitest";

test("lines end with LF, CRLF or CR; columns count from 1", () => {
  const text = "ab\ncd\r\ne\rf";
  const placeAt = placesIn(text, undefined);
  const at = (part: string): unknown => placeAt(text.indexOf(part));
  expect(at("b")).toEqual({ line: 1, column: 2 });
  expect(at("c")).toEqual({ line: 2, column: 1 });
  expect(at("e")).toEqual({ line: 3, column: 1 });
  expect(at("f")).toEqual({ line: 4, column: 1 });
  expect(placeAt(text.length)).toEqual({ line: 4, column: 2 });
});

test("both halves of a line end stand at the end of its line", () => {
  const placeAt = placesIn("cd\r\ne", undefined);
  expect([placeAt(2), placeAt(3), placeAt(4)]).toEqual([
    { line: 1, column: 3 },
    { line: 1, column: 3 },
    { line: 2, column: 1 },
  ]);
  expect(placesIn("\r\na", undefined)(0)).toEqual({ line: 1, column: 1 });
});

test("a file's name is part of its places", () => {
  expect(placesIn("a", "x.json")(0)).toEqual({ file: "x.json", line: 1, column: 1 });
  expect(placeOf(1, 2, undefined)).toEqual({ line: 1, column: 2 });
});
