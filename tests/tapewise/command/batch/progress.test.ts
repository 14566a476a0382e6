import { expect, test } from "vitest";
import { runCommand } from "../../run-command.ts";
import { batchFolder, crewOf } from "./crew.ts";

const [one = ""] = crewOf(1);
const at = batchFolder([one]);

test("progress is told on standard error where it is asked for, and nowhere else", async () => {
  const asked = await runCommand(["batch", "--chart", at("plain.csv"), "--progress"], `${one}\n${one}\n`);
  expect(asked.stderr).toMatch(/^2 people, \d+ a second\n$/);
  const unasked = await runCommand(["batch", "--chart", at("plain.csv")], `${one}\n`);
  expect(unasked.stderr).toBe("");
});
