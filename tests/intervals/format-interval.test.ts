import { atLeast, atMost, everything, formatInterval, interval, point } from "@tapewise/intervals";
import { expect, test } from "vitest";

test.each([
  ["[1, 2]", interval(1, 2)],
  ["[1, 2)", interval(1, 2, { toClosed: false })],
  ["(1, 2]", interval(1, 2, { fromClosed: false })],
  ["(1, 2)", interval(1, 2, { fromClosed: false, toClosed: false })],
  ["[-1.5, 2.25]", interval(-1.5, 2.25)],
  ["[3, 3]", point(3)],
  ["[3, ∞)", atLeast(3)],
  ["(-∞, 3]", atMost(3)],
  ["(-∞, ∞)", everything],
])("%s", (text, value) => {
  expect(formatInterval(value)).toBe(text);
});

test("bounds are written by the caller's rule, infinities are not handed to it", () => {
  expect(formatInterval(interval(431, 480), (mm) => (mm / 10).toFixed(1))).toBe("[43.1, 48.0]");
  expect(formatInterval(atLeast(430), (mm) => `${mm} mm`)).toBe("[430 mm, ∞)");
});
