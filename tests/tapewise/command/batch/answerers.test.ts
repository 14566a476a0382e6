import { beforeAll, describe, expect, test } from "vitest";
import { runCommand } from "../../run-command.ts";
import { batchFolder, crewOf } from "./crew.ts";

const people = crewOf(6000);
const input = `${people.join("\n")}\n`;
const at = batchFolder(people);

let whole = "";
beforeAll(async () => {
  const { status, stdout } = await runCommand(["batch", "--chart", at("plain.csv")], input);
  expect(status).toBe(1);
  whole = stdout;
});

describe("a batch in several threads", () => {
  test("gives the same lines in the same order", async () => {
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--workers", "3"], input);
    expect([ran.status, ran.stdout === whole]).toEqual([1, true]);
  });

  test.each([["0"], ["two"], ["257"]])("is not one in %s of them", async (count) => {
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--workers", count], "");
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain("from 1 to 256");
  });
});
