import { atLeast, atMost, everything, point } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

test("everything has no bounds", () => {
  expect(everything).toEqual({ from: -Infinity, to: Infinity, fromClosed: false, toClosed: false });
});

test("atLeast and atMost close their one bound", () => {
  expect(atLeast(3)).toEqual({ from: 3, to: Infinity, fromClosed: true, toClosed: false });
  expect(atMost(3)).toEqual({ from: -Infinity, to: 3, fromClosed: false, toClosed: true });
});

test("a bound that is no bound at all leaves everything", () => {
  expect(atLeast(-Infinity)).toEqual(everything);
  expect(atMost(Infinity)).toEqual(everything);
});

test("point holds one number", () => {
  expect(point(3)).toEqual({ from: 3, to: 3, fromClosed: true, toClosed: true });
});

test.each([
  ["atLeast(Infinity)", () => atLeast(Infinity)],
  ["atLeast(NaN)", () => atLeast(Number.NaN)],
  ["atMost(-Infinity)", () => atMost(-Infinity)],
  ["point(Infinity)", () => point(Infinity)],
  ["point(NaN)", () => point(Number.NaN)],
])("%s throws", (_, make) => {
  expect(make).toThrow(InvalidArgumentError);
});
