import { InvalidArgumentError } from "@tapewise/outcome";
import { normalCdf, normalCdfInto } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("fills another array, or its own", () => {
  const x = Float64Array.of(-40, -5.7, -0.3, 0, 0.67, 6, Number.POSITIVE_INFINITY);
  const expected = Array.from(x, normalCdf);
  const out = new Float64Array(x.length);
  normalCdfInto(x, out);
  expect([...out]).toEqual(expected);
  normalCdfInto(x, x);
  expect([...x]).toEqual(expected);
});

test("nothing is an array too", () => {
  const empty = new Float64Array(0);
  normalCdfInto(empty, empty);
  expect(empty.length).toBe(0);
});

test("arrays of different lengths are refused", () => {
  expect(() => normalCdfInto(new Float64Array(3), new Float64Array(2))).toThrow(
    new InvalidArgumentError("out", 2, "as long as x (3 numbers)"),
  );
});

test("NaN is named by its place, before anything is written", () => {
  const out = Float64Array.of(7, 7, 7);
  expect(() => normalCdfInto(Float64Array.of(0, Number.NaN, 1), out)).toThrow(
    new InvalidArgumentError("x[1]", Number.NaN, "a number"),
  );
  expect([...out]).toEqual([7, 7, 7]);
});
