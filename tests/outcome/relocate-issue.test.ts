import { createIssue, defineIssues, relocateIssue } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const catalogue = defineIssues({
  "bad-cell": { severity: "error", message: "{received} is no length", expected: "a length" },
});
const issue = createIssue(catalogue, "bad-cell", { path: ["from"], received: "x" });

describe("relocateIssue", () => {
  test("puts the prefix before the path and changes nothing else", () => {
    expect(relocateIssue(issue, ["sizes", 2])).toEqual({ ...issue, path: ["sizes", 2, "from"] });
  });

  test("states no place where neither has one", () => {
    expect(Object.hasOwn(relocateIssue(issue, ["sizes", 2]), "place")).toBe(false);
  });

  test("adds a place where there is none", () => {
    const place = { file: "chart.csv", line: 4, column: 7 };
    expect(relocateIssue(issue, [], place).place).toEqual(place);
  });

  test("keeps the place that is there: the inner one is nearer to the fault", () => {
    const inner = { line: 4, column: 7 };
    const placed = relocateIssue(issue, [], inner);
    expect(relocateIssue(placed, ["sizes"], { line: 1, column: 1 }).place).toEqual(inner);
  });

  test("leaves the issue it was given untouched", () => {
    relocateIssue(issue, ["sizes", 2], { line: 1, column: 1 });
    expect(issue.path).toEqual(["from"]);
    expect(Object.hasOwn(issue, "place")).toBe(false);
  });
});
