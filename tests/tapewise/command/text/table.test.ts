import { describe, expect, test } from "vitest";
import { table } from "../../../../packages/tapewise/src/command/text/table.ts";

describe("table", () => {
  test("aligns columns and ends no line in spaces", () => {
    expect(
      table(
        ["size", "n"],
        [
          ["S", "9"],
          ["one size", "10"],
        ],
        ["left", "right"],
      ),
    ).toEqual(["  size       n", "  --------  --", "  S          9", "  one size  10"]);
  });
});
