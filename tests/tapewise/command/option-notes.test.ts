import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART, runCommand } from "../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "me.json": JSON.stringify({ cut: "women", stature: "171 cm", readings: { "torso-length": ["44 cm"] } }),
});
const chart = ["--chart", at("plain.csv")];
const torso = ["--torso-length", "44.5 cm", "44.3 cm", "44.6 cm"];
const choose = async (...argv: readonly string[]) => {
  const { status, stderr } = await runCommand(["choose", ...argv, ...chart]);
  return { status, stderr: stderr.replace(/\s+/g, " ") };
};

describe("an option that changes nothing is told on standard error", () => {
  test.each([
    [[...torso, "--rule-length", "30 cm"], "--rule-length was not used: it goes with --tool short-rule"],
    [[...torso, "--rule-length", "30 cm", "--tool", "tape"], "--rule-length was not used"],
    [[...torso, "--cut", "women"], "no survey figures were used: they need --stature beside --cut"],
    [[...torso, "--stature", "171 cm"], "no survey figures were used: they need --cut beside --stature"],
    [
      [...torso, "--person", at("me.json"), "--cut", "men"],
      `in place of what ${at("me.json")} says: torso-length, cut`,
    ],
  ])("%j", async (argv, note) => {
    const { status, stderr } = await choose(...argv);
    expect(status).toBe(0);
    expect(stderr).toContain(`Note: `);
    expect(stderr).toContain(note);
  });

  test.each([
    [torso],
    [[...torso, "--rule-length", "30 cm", "--tool", "short-rule", "--measured-by", "helper"]],
    [[...torso, "--cut", "women", "--stature", "171 cm"]],
    [[...torso, "--cut", "women", "--prior", "reference"]],
    [[...torso, "--cut", "women", "--prior", "none"]],
    [["--person", at("me.json")]],
    [["--person", at("me.json"), "--hip-belt-girth", "91 cm", "90 cm", "92 cm"]],
  ])("but not %j", async (argv) => {
    expect((await choose(...argv)).stderr).not.toContain("Note:");
  });
});

describe("a word without an option", () => {
  test.each([
    [["choose", at("plain.csv")], `(Did you mean --chart ${at("plain.csv")}?)`],
    [["batch", "a.csv", "b.json"], "(Did you mean --chart a.csv b.json?)"],
    [["choose", "43 cm"], "too many arguments"],
  ])("%j is a wrong call, and a chart gets its option", async (argv, says) => {
    const { status, stdout, stderr } = await runCommand(argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
    expect(stderr).toContain("too many arguments");
  });

  test("a wrong word that is no chart gets no such hint", async () => {
    expect((await runCommand(["choose", "43 cm"])).stderr).not.toContain("Did you mean");
  });
});

test("the help says what --first-pack does", async () => {
  const { stdout } = await runCommand(["choose", "--help"]);
  expect(stdout.replace(/\s+/g, " ")).toContain("adjustable harnesses first");
});
