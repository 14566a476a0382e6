import { dimensionIds } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";
import { run } from "../../../../packages/tapewise/src/command/run.ts";
import { collect, runCommand, terminal } from "../../run-command.ts";

/** Walks through the guide on a terminal, typing these lines; `end` closes the input afterwards. */
async function walk(argv: readonly string[], typed: string, end = true) {
  const { stdin, stdout } = terminal();
  let shown = "";
  stdout.on("data", (chunk: Buffer) => {
    shown += chunk.toString("utf8");
  });
  const err = collect();
  stdin.write(typed);
  if (end) stdin.end();
  const status = await run(["guide", ...argv], { stdin, stdout, stderr: err.stream });
  return { status, shown, stderr: err.text() };
}

// Enter for the introduction, the three landmarks of the torso length, and the steps.
const THROUGH = "\n".repeat(5);
const torso = ["torso-length", "--measured-by", "self", "--tool", "tape"];

describe("tapewise guide", () => {
  test("lists the dimensions", async () => {
    const { status, stdout } = await runCommand(["guide"]);
    expect(status).toBe(0);
    for (const id of dimensionIds) expect(stdout).toMatch(new RegExp(`^  ${id}$`, "m"));
  });

  test.each(dimensionIds)("prints what to find and how to take the %s, with its cautions", async (id) => {
    const { status, stdout } = await runCommand(["guide", id]);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Be careful$/m);
    expect(stdout).toMatch(/^Find /m);
    expect(stdout).toMatch(/^Taking it with a /m);
    expect(stdout).toMatch(/^ {2}1\. /m);
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("understands other names, and takes the way that is asked for", async () => {
    const { stdout } = await runCommand([
      "guide",
      "Back length",
      "--tool",
      "cord-and-ruler",
      "--measured-by",
      "self",
    ]);
    expect(stdout).toMatch(/^Torso length\. /);
    expect(stdout).toMatch(/^Taking it with a cord and ruler, by yourself\./m);
  });

  test("prints JSON", async () => {
    const { stdout } = await runCommand(["guide", "torso-length", "--json"]);
    expect(JSON.parse(stdout)).toMatchObject({
      id: "torso-length",
      landmarks: [{ id: "cervicale" }, {}, {}],
    });
    expect(JSON.parse((await runCommand(["guide", "--json"])).stdout)).toHaveLength(dimensionIds.length);
  });

  test("prints JSON for a dimension that nobody knows too", async () => {
    const { status, stdout } = await runCommand(["guide", "elbow", "--json"]);
    expect(status).toBe(2);
    expect(JSON.parse(stdout)).toMatchObject({ issues: [{ severity: "error", received: "elbow" }] });
  });

  test("on a terminal it walks to the estimate and to the next command", async () => {
    const { status, shown, stderr } = await walk(torso, `${THROUGH}43 cm\n44 cm\n45 cm\n\ny\n`);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(shown).toContain("Find the bump at the base of the neck");
    expect(shown.replace(/\s+/g, " ")).toContain("Torso length 44.0 cm from 3 readings");
    expect(shown).toMatch(
      /tapewise choose \\\s+--torso-length "43 cm" "44 cm" "45 cm" \\\s+--tool tape --measured-by self --afresh \\\s+--chart chart\.csv/,
    );
  });

  test("asks again for a reading that it cannot read, and says why", async () => {
    const { shown } = await walk(torso, `${THROUGH}43\n43 cm\nlong\n44 cm\n\nn\n`);
    expect(shown).toContain("[length-no-unit]");
    expect(shown).toContain("[length-not-a-number]");
    expect(shown).toContain('--torso-length "43 cm" "44 cm" ');
    expect(shown).not.toContain("--afresh");
  });

  test("takes each reading off the screen before it asks for the next", async () => {
    const { shown } = await walk(torso, `${THROUGH}43.7 cm\n44.1 cm\n\nn\n`);
    const [, after = ""] = shown.split("Reading 1 is noted.");
    const [between = ""] = after.split("Reading 2 is noted.");
    expect(between).not.toContain("43.7");
    // Up one line and clear it, before the note.
    expect(shown).toContain("\u001b[1A\u001b[2KReading 1 is noted.");
  });

  test("keeps the unit that the call names in the command to go on with", async () => {
    const { shown } = await walk([...torso, "--unit", "in"], `${THROUGH}17 1/4\n17.5\n\nn\n`);
    expect(shown.replace(/\s+/g, " ")).toContain("Torso length 17.38 in");
    expect(shown).toContain('--torso-length "17 1/4" 17.5 --unit in');
  });

  test("quotes readings that a shell would read otherwise", async () => {
    const { shown } = await walk(torso, `${THROUGH}1'5"\n17"\n\nn\n`);
    expect(shown).toContain(`--torso-length '1'\\''5"' '17"'`);
  });

  test.each([
    ["the input ends before the first step", ""],
    ["the input ends among the steps", "\n\n"],
    ["the input ends among the readings", `${THROUGH}43 cm\n`],
    ["Ctrl-C is pressed among the steps", "\n\u0003"],
    ["Ctrl-C is pressed in a reading", `${THROUGH}43 cm\n4\u0003`],
    ["there is no reading", `${THROUGH}\n`],
  ])("leaves cleanly when %s", async (_when, typed) => {
    const { status, shown, stderr } = await walk(torso, typed, !typed.includes("\u0003"));
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(shown.trimEnd().endsWith("Left. Nothing was kept.")).toBe(true);
  });

  test("only prints on a terminal when nothing shall be asked", async () => {
    const { status, shown } = await walk([...torso, "--no-ask"], "");
    expect(status).toBe(0);
    expect(shown).not.toContain("Press Enter");
    expect(shown).toContain("What goes wrong");
  });
});
