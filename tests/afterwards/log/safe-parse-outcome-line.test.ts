import { safeParseOutcomeLine } from "@tapewise/afterwards";
import { expect, test } from "vitest";
import { rowOf } from "./rows.ts";

test("a line is a row in JSON", () => {
  expect(safeParseOutcomeLine(JSON.stringify(rowOf()))).toEqual({ ok: true, value: rowOf(), issues: [] });
});

test.each(["", "{", "NaN", "undefined", '{"v":1'])("%j is no JSON", (line) => {
  const [issue] = safeParseOutcomeLine(line).issues;
  expect([issue?.code, issue?.received]).toEqual(["outcome-line-not-json", line]);
});

test("JSON that is no row says what is wrong with it", () => {
  expect(safeParseOutcomeLine('{"v":9}').issues[0]).toMatchObject({
    code: "outcome-version-newer",
    path: ["v"],
    received: 9,
    facts: { known: 1 },
  });
});
