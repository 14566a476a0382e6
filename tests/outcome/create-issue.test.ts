import { createIssue, defineIssues, translateIssue } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const catalogue = defineIssues({
  "unit-left-out": {
    severity: "error",
    message: "{received} has no unit",
    expected: "a length with its unit, such as {example}",
  },
  "size-doubtful": { severity: "warning", message: "size {size} is doubtful", expected: "another size" },
});

describe("createIssue", () => {
  test("renders both texts from the facts and keeps every part", () => {
    const issue = createIssue(catalogue, "unit-left-out", {
      path: ["readings", 1],
      received: "19",
      facts: { example: "19 in" },
      place: { file: "people.csv", line: 3, column: 7 },
    });
    expect(issue).toEqual({
      code: "unit-left-out",
      severity: "error",
      path: ["readings", 1],
      message: "19 has no unit",
      received: "19",
      expected: "a length with its unit, such as 19 in",
      facts: { example: "19 in" },
      place: { file: "people.csv", line: 3, column: 7 },
    });
  });

  test("without details has an empty path, no facts, no place, and received nothing", () => {
    const issue = createIssue(catalogue, "unit-left-out");
    expect(issue).toEqual({
      code: "unit-left-out",
      severity: "error",
      path: [],
      message: "nothing has no unit",
      received: "nothing",
      expected: "a length with its unit, such as {example}",
      facts: {},
    });
    expect(Object.hasOwn(issue, "place")).toBe(false);
  });

  test("takes the severity from the catalogue", () => {
    expect(createIssue(catalogue, "size-doubtful", { facts: { size: "M" } }).severity).toBe("warning");
  });

  test("lets a fact named received replace the text of what was received", () => {
    const issue = createIssue(catalogue, "unit-left-out", { received: "19", facts: { received: "row 4" } });
    expect(issue.message).toBe("row 4 has no unit");
    expect(issue.received).toBe("19");
  });

  test.each([
    ["", '"" has no unit'],
    ["  ", '"  " has no unit'],
  ])("quotes %j in the message, where it could not be seen otherwise", (received, message) => {
    const issue = createIssue(catalogue, "unit-left-out", { received });
    expect(issue.message).toBe(message);
    expect(issue.received).toBe(received);
  });

  test.each(["toString", "nowhere"])("throws for the code %j, which the catalogue does not have", (code) => {
    const untyped: Readonly<Record<string, (typeof catalogue)["size-doubtful"]>> = catalogue as never;
    expect(() => createIssue(untyped, code)).toThrow(
      expect.objectContaining({ name: "InvalidArgumentError", argument: "code" }),
    );
  });
});

describe("translateIssue", () => {
  const german = {
    "unit-left-out": { message: "{received} hat keine Einheit", expected: "eine Länge wie {example}" },
  };

  test("renders both texts anew and leaves the rest alone", () => {
    const issue = createIssue(catalogue, "unit-left-out", { received: "19", facts: { example: "19 in" } });
    expect(translateIssue(issue, german)).toEqual({
      ...issue,
      message: "19 hat keine Einheit",
      expected: "eine Länge wie 19 in",
    });
  });

  test("shows an empty text the way the original does", () => {
    const issue = createIssue(catalogue, "unit-left-out", { received: "" });
    expect(translateIssue(issue, german).message).toBe('"" hat keine Einheit');
  });

  test("returns an issue unchanged when its code has no translation, inherited names included", () => {
    const issue = createIssue(catalogue, "size-doubtful");
    expect(translateIssue(issue, german)).toBe(issue);
    expect(translateIssue({ ...issue, code: "toString" }, german).message).toBe(issue.message);
  });
});
