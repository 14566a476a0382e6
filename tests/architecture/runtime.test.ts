import { expect, test } from "vitest";

test("the tests run on a Node that the workspace supports", () => {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  expect(major > 22 || (major === 22 && minor >= 12), process.version).toBe(true);
});
