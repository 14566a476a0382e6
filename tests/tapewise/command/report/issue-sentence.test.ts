import { createIssue, defineIssues } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { issueSentence } from "../../../../packages/tapewise/src/command/report/issue-sentence.ts";

const catalogue = defineIssues({
  "word-unknown": { severity: "error", message: "“{received}” is not known{hint}", expected: "a word" },
});
const sentence = (hint: string): string =>
  issueSentence(createIssue(catalogue, "word-unknown", { received: "x", facts: { hint } }));

test("a message gets a full stop, and a question keeps its mark", () => {
  expect(sentence("")).toMatch(/ is not known\. Expected: a word\. \[word-unknown\]$/);
  expect(sentence("; did you mean “y”?")).toMatch(/did you mean “y”\? Expected: a word\. \[word-unknown\]$/);
});
