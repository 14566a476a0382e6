import { describe, expect, test } from "vitest";
import { readTextFile } from "../../../packages/tapewise/src/command/files.ts";
import { folderWith } from "../run-command.ts";

const little = Buffer.from("size,torso-length (cm)\nS,38-43\n", "utf16le");
const big = Buffer.from(little).swap16();

const at = folderWith({
  "little-marked.csv": Buffer.concat([Buffer.from([0xff, 0xfe]), little]),
  "big-marked.csv": Buffer.concat([Buffer.from([0xfe, 0xff]), big]),
  "little.csv": little,
  "big.csv": big,
  "picture.csv": Uint8Array.from({ length: 400 }, (_, at) => (at * 7919) % 251),
  "zeros.csv": new Uint8Array(64),
  "good.csv": "\uFEFFsize,torso-length (cm)\nS,38-43\n",
});

describe("readTextFile", () => {
  test.each(["little-marked", "big-marked", "little", "big"])(
    "%s: UTF-16 is told by its name",
    async (name) => {
      const { issues } = await readTextFile(at(`${name}.csv`));
      expect(issues).toMatchObject([{ code: "file-utf16", expected: expect.stringContaining("UTF-8") }]);
      expect(issues[0]?.message).toContain("is saved as UTF-16");
    },
  );

  test.each(["picture", "zeros"])("%s is no text at all", async (name) => {
    expect((await readTextFile(at(`${name}.csv`))).issues).toMatchObject([{ code: "file-binary" }]);
  });

  test("UTF-8 is read, without its byte order mark", async () => {
    const text = await readTextFile(at("good.csv"));
    expect(text.ok && text.value.startsWith("size,")).toBe(true);
  });
});
