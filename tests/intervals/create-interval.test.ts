import { type IntervalEnds, interval, intervalsIssues, safeInterval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const codesOf = (from: number, to: number, ends?: IntervalEnds): readonly string[] =>
  safeInterval(from, to, ends).issues.map((issue) => issue.code);

describe("interval", () => {
  test("closes finite ends and leaves infinite ends open unless told otherwise", () => {
    expect(interval(1, 2)).toEqual({ from: 1, to: 2, fromClosed: true, toClosed: true });
    expect(interval(-Infinity, 2)).toEqual({ from: -Infinity, to: 2, fromClosed: false, toClosed: true });
    expect(interval(1, Infinity)).toEqual({ from: 1, to: Infinity, fromClosed: true, toClosed: false });
    expect(interval(1, 2, { fromClosed: false })).toEqual({
      from: 1,
      to: 2,
      fromClosed: false,
      toClosed: true,
    });
    expect(interval(1, 2, { toClosed: false })).toEqual({
      from: 1,
      to: 2,
      fromClosed: true,
      toClosed: false,
    });
  });

  test("writes zero without a sign", () => {
    expect(Object.is(interval(-0, 1).from, 0)).toBe(true);
    expect(Object.is(interval(-1, -0).to, 0)).toBe(true);
  });

  test("throws what the programmer got wrong, by the argument's name", () => {
    expect(() => interval(480, 430)).toThrow(InvalidArgumentError);
    expect(() => interval(480, 430)).toThrow(
      "to must be an upper bound that is not below 480, but received 430",
    );
    expect(() => interval(Number.NaN, 2)).toThrow(/^from must be a number.*received NaN$/);
    expect(() => interval(1, Infinity, { toClosed: true })).toThrow(
      "toClosed must be false where the bound is infinite, but received true",
    );
    expect(() => interval(3, 3, { fromClosed: false })).toThrow(
      /^an interval must be .* but received \(3, 3\]$/,
    );
  });
});

describe("safeInterval", () => {
  test("gives the same interval as `interval`, without issues", () => {
    const outcome = safeInterval(1, 2, { toClosed: false });
    expect(outcome).toEqual({ ok: true, value: interval(1, 2, { toClosed: false }), issues: [] });
  });

  test("reports reversed bounds and never swaps them", () => {
    const outcome = safeInterval(48, 43);
    expect(outcome.ok).toBe(false);
    expect(outcome.issues).toEqual([
      {
        code: "interval-bounds-reversed",
        severity: "error",
        path: ["to"],
        message: "the upper bound 43 is below the lower bound 48",
        received: 43,
        expected: "an upper bound that is not below 48",
        facts: { from: 48, to: 43 },
      },
    ]);
  });

  test("reports each bound that is not a number, whatever it is instead", () => {
    const outcome = safeInterval(Number.NaN, "48" as unknown as number);
    expect(outcome.issues.map(({ code, path, received }) => ({ code, path, received }))).toEqual([
      { code: "interval-bound-not-a-number", path: ["from"], received: "NaN" },
      { code: "interval-bound-not-a-number", path: ["to"], received: "48" },
    ]);
  });

  test.each([
    [{ fromClosed: false }, "(3, 3]"],
    [{ toClosed: false }, "[3, 3)"],
    [{ fromClosed: false, toClosed: false }, "(3, 3)"],
  ])("calls equal bounds with %o empty", (ends, received) => {
    const [issue] = safeInterval(3, 3, ends).issues;
    expect(issue).toMatchObject({ code: "interval-empty", path: [], received });
  });

  test("an infinity on both sides is empty, and a closed infinity is its own mistake", () => {
    expect(codesOf(Infinity, Infinity)).toEqual(["interval-empty"]);
    expect(codesOf(-Infinity, -Infinity)).toEqual(["interval-empty"]);
    expect(codesOf(-Infinity, Infinity, { fromClosed: true, toClosed: true })).toEqual([
      "interval-infinity-closed",
      "interval-infinity-closed",
    ]);
    expect(codesOf(Infinity, Infinity, { fromClosed: true, toClosed: true })).toEqual([
      "interval-infinity-closed",
      "interval-infinity-closed",
    ]);
  });

  test("reports several mistakes at once, and its issues survive JSON", () => {
    const { issues } = safeInterval(Infinity, 5, { fromClosed: true });
    expect(issues.map((issue) => issue.code)).toEqual([
      "interval-infinity-closed",
      "interval-bounds-reversed",
    ]);
    expect(JSON.parse(JSON.stringify(issues))).toEqual(issues);
  });

  test("uses every code of the catalogue", () => {
    const seen = new Set([
      ...codesOf(Number.NaN, 1),
      ...codesOf(2, 1),
      ...codesOf(1, 1, { toClosed: false }),
      ...codesOf(1, Infinity, { toClosed: true }),
    ]);
    expect([...seen].sort()).toEqual(Object.keys(intervalsIssues).sort());
  });
});
