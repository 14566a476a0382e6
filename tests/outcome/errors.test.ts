import {
  createIssue,
  defineIssues,
  InvalidArgumentError,
  IssuesError,
  TapewiseError,
} from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const catalogue = defineIssues({
  "it-rains": { severity: "error", message: "it rains", expected: "sun" },
  "it-snows": { severity: "error", message: "it snows", expected: "sun" },
});
const rain = createIssue(catalogue, "it-rains");
const snow = createIssue(catalogue, "it-snows");

describe("the errors", () => {
  test.each([
    ["TapewiseError", new TapewiseError("no")],
    ["InvalidArgumentError", new InvalidArgumentError("size", 1, "a text")],
    ["IssuesError", new IssuesError([rain])],
  ])("%s is an Error of the family and carries its own name", (name, error) => {
    expect(error).toBeInstanceOf(Error);
    expect(error).toBeInstanceOf(TapewiseError);
    expect(error.name).toBe(name);
    expect(String(error).startsWith(`${name}: `)).toBe(true);
  });

  test("InvalidArgumentError says which argument, what it must be and what it was", () => {
    const error = new InvalidArgumentError("probability", 1.5, "a number from 0 to 1");
    expect(error.message).toBe("probability must be a number from 0 to 1, but received 1.5");
    expect(error.argument).toBe("probability");
    expect(error.expected).toBe("a number from 0 to 1");
  });

  test.each([
    [Number.NaN, "NaN"],
    [undefined, "nothing"],
    [null, "null"],
    ["", '""'],
    [" ", '" "'],
  ])("InvalidArgumentError shows %j legibly", (received, shown) => {
    expect(new InvalidArgumentError("x", received, "y").message).toBe(`x must be y, but received ${shown}`);
  });

  test("IssuesError carries the issues and joins their messages", () => {
    const issues = [rain, snow];
    const error = new IssuesError(issues);
    expect(error.issues).toBe(issues);
    expect(error.message).toBe("it rains; it snows");
  });
});
