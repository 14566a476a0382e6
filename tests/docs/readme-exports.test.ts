import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readWorkspace, root } from "../architecture/workspace.ts";
import { exportLists, firstSentence, withExports } from "./readme-exports.ts";

const packages = readWorkspace().filter(({ folder }) => folder !== "site");
const lists = exportLists(packages);

test.each(packages)(
  "the README of $folder lists what it exports: `npm run docs:write` does",
  ({ folder }) => {
    const list = lists.get(folder) ?? "";
    const readme = readFileSync(join(root, folder, "README.md"), "utf8");
    expect(withExports(readme, list)).toBe(readme);
    // A table without a row, or a row without a sentence, would tell nothing.
    expect(list.match(/^\| `\w+` \| \S.+ \|$/gm)?.length).toBe(list.match(/^\| `/gm)?.length);
    expect(list).toContain("\n| `");
  },
);

test("a list takes the place of the one before, and the rest of the README stays", () => {
  const [list = ""] = lists.values();
  const older = list.replace(/\| `\w+` \|/, "| `gone` |");
  const readme = `# A package\n\n${older}\nWhat stands below.\n`;
  expect(withExports(readme, list)).toBe(`# A package\n\n${list}\nWhat stands below.\n`);
  expect(withExports("# A package\n", list)).toBe(`# A package\n\n${list}`);
  expect(() => withExports(readme.replace("<!-- end of exports -->", ""), list)).toThrow("not both");
});

describe("the first sentence", () => {
  test.each([
    ["Says so. And more.", "Says so"],
    ["Over two\nlines.\n\nAnd more.", "Over two lines"],
    ["As {@link unwrap} does, in mm.", "As `unwrap` does, in mm"],
    [
      "By the GUM (JCGM 100:2008, App. B.9), e.g. Table 2. More.",
      "By the GUM (JCGM 100:2008, App. B.9), e.g. Table 2",
    ],
    ["After J. F. Allen (1983). More.", "After J. F. Allen (1983)"],
    ["The parts of 1.5 in: `a` and so on", "The parts of 1.5 in"],
    ["Either a | b, or `c|d`, for a < b", "Either a \\| b, or `c\\|d`, for a \\< b"],
  ])("of %j is %j", (text, expected) => {
    expect(firstSentence(text)).toBe(expected);
  });
});
