import {
  createIssue,
  defineIssues,
  failure,
  hasIssues,
  IssuesError,
  success,
  unwrap,
} from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const catalogue = defineIssues({
  "it-rains": { severity: "error", message: "it rains", expected: "sun" },
  "it-drizzles": { severity: "warning", message: "it drizzles", expected: "sun" },
});
const rain = createIssue(catalogue, "it-rains");
const drizzle = createIssue(catalogue, "it-drizzles");

describe("success and failure", () => {
  test("a success has its value and no issues unless some are given", () => {
    expect(success("M")).toEqual({ ok: true, value: "M", issues: [] });
    expect(success("M", [drizzle])).toEqual({ ok: true, value: "M", issues: [drizzle] });
  });

  test("a failure has its issues and no value", () => {
    expect(failure([rain, drizzle])).toEqual({ ok: false, issues: [rain, drizzle] });
  });
});

describe("unwrap", () => {
  test.each([[0], [""], [null], [undefined], [false]])("gives %j back, though it is falsy", (value) => {
    expect(unwrap(success(value))).toBe(value);
  });

  test("gives the value back even when there are warnings", () => {
    expect(unwrap(success("M", [drizzle]))).toBe("M");
  });

  test("throws a failure's own issues", () => {
    const failed = failure([rain]);
    expect(() => unwrap(failed)).toThrow(IssuesError);
    expect(() => unwrap(failed)).toThrow(expect.objectContaining({ issues: failed.issues }));
  });
});

describe("hasIssues", () => {
  test("tells an empty list from one that is not", () => {
    expect(hasIssues([])).toBe(false);
    expect(hasIssues([rain])).toBe(true);
  });
});
