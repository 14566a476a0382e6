import { createIssue, defineIssues, formatIssue, formatPath, type IssuePath } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const catalogue = defineIssues({
  "it-rains": { severity: "warning", message: "it rains", expected: "sun" },
});

describe("formatIssue", () => {
  test("without path or place begins with the severity", () => {
    expect(formatIssue(createIssue(catalogue, "it-rains"))).toBe(
      "warning: it rains (expected sun) [it-rains]",
    );
  });

  test("puts the place before the path", () => {
    const issue = createIssue(catalogue, "it-rains", {
      path: ["sizes", 0],
      place: { file: "chart.csv", line: 2, column: 5 },
    });
    expect(formatIssue(issue)).toBe("chart.csv:2:5 sizes[0]: warning: it rains (expected sun) [it-rains]");
  });

  test("spells line and column out when the file has no name", () => {
    const issue = createIssue(catalogue, "it-rains", { place: { line: 2, column: 5 } });
    expect(formatIssue(issue)).toBe("line 2, column 5: warning: it rains (expected sun) [it-rains]");
  });
});

describe("formatPath", () => {
  test.each<[IssuePath, string]>([
    [[], ""],
    [["torso-length"], "torso-length"],
    [[0], "[0]"],
    [[0, "from"], "[0].from"],
    [["sizes", 2, "torso-length", "from"], "sizes[2].torso-length.from"],
    [["torso-length (cm)"], "torso-length (cm)"],
  ])("writes %j as %j", (path, text) => {
    expect(formatPath(path)).toBe(text);
  });

  test.each<[IssuePath, string]>([
    [["", "from"], '[""].from'],
    [["a.b"], '["a.b"]'],
    [["a", "b[0]"], 'a["b[0]"]'],
    [["two\nlines"], '["two\\nlines"]'],
    [["a", ' "b"'], 'a[" \\"b\\""]'],
    [["line\u2028separator"], '["line\\u2028separator"]'],
  ])("quotes a name that could be mistaken for something else: %j", (path, text) => {
    expect(formatPath(path)).toBe(text);
  });
});
