import { fc, test as lawOf } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { findRepeatedKeys } from "../../../packages/tapewise/src/person/find-repeated-keys.ts";

describe("findRepeatedKeys", () => {
  test.each([
    ['{"a":1,"b":2}', []],
    ['{"a":1,"a":2}', [["a"]]],
    ['{"a":1,"a":2,"a":3}', [["a"], ["a"]]],
    ['{ "r" : { "t" : ["1"] , "t" : ["2"] } }', [["r", "t"]]],
    ['[{"a":1},{"a":1,"b":[0,{"c":1,"c":2}]}]', [[1, "b", 1, "c"]]],
    // One key, written plainly and with an escape.
    ['{"a":1,"\\u0061":2}', [["a"]]],
    // What looks like a key inside of a text is none.
    ['{"a":"\\",\\"a\\":1","b":"a"}', []],
    ['{"__proto__":1,"__proto__":2}', [["__proto__"]]],
    ['["a","a"]', []],
    ["1", []],
  ] as const)("%s", (text, paths) => {
    expect(findRepeatedKeys(text)).toEqual(paths);
  });

  lawOf.prop([fc.json(), fc.constantFrom(0, 2)])(
    "law: what JSON.stringify writes repeats nothing",
    (text, indent) => {
      expect(findRepeatedKeys(JSON.stringify(JSON.parse(text), undefined, indent))).toEqual([]);
    },
  );

  test("goes once through a text of any depth", () => {
    const depth = 400_000;
    const text = '{"a":['.repeat(depth) + "]}".repeat(depth);
    const start = performance.now();
    expect(findRepeatedKeys(text)).toEqual([]);
    // Once through takes a fraction of a second; the square of the depth would be 160 000 000 000 steps.
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});
