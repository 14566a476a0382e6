import { asWritten, readTable } from "@tapewise/tables";
import { expect, test } from "vitest";

test("only cells whose marks do not fit change, and their places stay", () => {
  const table = asWritten(readTable('"82"5,"91"\n# a remark, kept\n"7,8'));
  expect(table.separator).toBe(",");
  expect(table.rows).toEqual([
    {
      kind: "cells",
      line: 1,
      cells: [
        { text: '"82"5', line: 1, column: 1 },
        { text: "91", line: 1, column: 7 },
      ],
    },
    { kind: "remark", line: 2, text: "# a remark, kept" },
    {
      kind: "cells",
      line: 3,
      cells: [
        { text: '"7', line: 3, column: 1 },
        { text: "8", line: 3, column: 4 },
      ],
    },
  ]);
});

test("a text without faults is returned as it is", () => {
  const table = readTable("a,b");
  expect(asWritten(table)).toBe(table);
});
