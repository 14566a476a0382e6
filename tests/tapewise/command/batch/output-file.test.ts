import { readFileSync, writeFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { runCommand } from "../../run-command.ts";
import { batchFolder, crewOf } from "./crew.ts";

const people = crewOf(1500);
const input = `${people.join("\n")}\n`;
const at = batchFolder(people);

let whole = "";
beforeAll(async () => {
  const { status, stdout } = await runCommand(["batch", "--chart", at("plain.csv")], input);
  expect(status).toBe(1);
  whole = stdout;
});

describe("a batch", () => {
  test("writes to a file, which it begins anew", async () => {
    const file = at("output.ndjson");
    writeFileSync(file, "something else\n".repeat(1000));
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--output", file], input);
    expect([ran.status, ran.stdout]).toEqual([1, ""]);
    expect(readFileSync(file, "utf8")).toBe(whole);
  });

  test.each([
    [["--output", "a", "--resume", "b"], "cannot be used with"],
    [["--output", "no/such/folder/a"], "[file-unwritable]"],
    [["--resume", "no/such/folder/a"], "[file-unwritable]"],
  ])("refuses a wrong call: %j", async (argv, said) => {
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), ...argv], "");
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain(said);
  });
});
