import { InvalidArgumentError } from "@tapewise/outcome";
import { decimalDifferences } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("decimalDifferences", () => {
  test.each([
    [
      [430.1, 430.2, 430],
      [0, 0.1, -0.1],
    ],
    [
      [1e21, 1e21 + 1e6],
      [0, 1e6],
    ],
    [
      [1.5e-7, 2.5e-7],
      [0, 1e-7],
    ],
    [
      [-0.3, 0.6],
      [0, 0.9],
    ],
    [
      [1e300, 1e-300],
      [0, -1e300],
    ],
    [
      [0, -0],
      [0, 0],
    ],
    [[43.25], [0]],
  ])("of %j are %j", (values, expected) => {
    expect(decimalDifferences(values)).toEqual(expected);
  });

  test("refuses what is no sample", () => {
    expect(() => decimalDifferences([])).toThrow(InvalidArgumentError);
    expect(() => decimalDifferences([1, Number.NaN])).toThrow(InvalidArgumentError);
  });
});
