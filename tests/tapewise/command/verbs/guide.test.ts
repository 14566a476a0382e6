import { dimensionIds } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";
import { run } from "../../../../packages/tapewise/src/command/run.ts";
import { collect, runCommand, terminal } from "../../run-command.ts";

/** How a walk differs from one on a wide terminal whose input ends after what was typed. */
interface Setting {
  readonly end?: boolean;
  readonly term?: string;
  readonly columns?: number;
}

/** Walks through the guide on a terminal, typing these lines. */
async function walk(argv: readonly string[], typed: string, { end = true, term, columns }: Setting = {}) {
  const { stdin, stdout } = terminal();
  Object.assign(stdout, { columns });
  let shown = "";
  stdout.on("data", (chunk: Buffer) => {
    shown += chunk.toString("utf8");
  });
  const err = collect();
  stdin.write(typed);
  if (end) stdin.end();
  const status = await run(["guide", ...argv], { stdin, stdout, stderr: err.stream, term });
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

  describe("when the call does not say who measures", () => {
    test("on a pipe it shows the way for one person alone", async () => {
      const { stdout } = await runCommand(["guide", "torso-length"]);
      expect(stdout).toMatch(/^Taking it with a tape, by yourself\./m);
      const cord = await runCommand(["guide", "torso-length", "--tool", "cord-and-ruler"]);
      expect(cord.stdout).toMatch(/^Taking it with a cord and ruler, by yourself\./m);
    });

    test.each([[["interscye-breadth"]], [["torso-length", "--tool", "short-rule"]]])(
      "%j needs a helper, and says so",
      async (argv) => {
        expect((await runCommand(["guide", ...argv])).stdout).toMatch(
          /^Taking it with a .*, with a helper\./m,
        );
      },
    );

    test("on a terminal it asks, and Enter is on your own with a tape", async () => {
      const { shown } = await walk(["torso-length"], `\n${THROUGH}43 cm\n44 cm\n45 cm\n\ny\n`);
      expect(shown).toContain("1. on my own with a tape");
      expect(shown).toContain("3. with a helper and a tape");
      expect(shown).toContain("Taking it with a tape, by yourself.");
      expect(shown).toContain("--tool tape --measured-by self --afresh");
    });

    test("takes the number of another way, and asks again for anything else", async () => {
      const { shown } = await walk(["torso-length"], `9\nhelper\n3\n${THROUGH}43 cm\n44 cm\n\nn\n`);
      expect(shown.match(/Type a number from 1 to 5/g)).toHaveLength(2);
      expect(shown).toContain("Taking it with a tape, with a helper.");
      expect(shown).toContain("--tool tape --measured-by helper");
    });

    test("asks only for what is not said", async () => {
      const { shown } = await walk(["torso-length", "--measured-by", "self"], "2\n");
      expect(shown).toContain("2. on my own with a cord and ruler");
      expect(shown).not.toContain("with a helper and a tape");
      const said = await walk(torso, "");
      expect(said.shown).not.toContain("on my own");
    });

    test("leaves cleanly when the question is not answered", async () => {
      const { status, shown } = await walk(["torso-length"], "");
      expect(status).toBe(0);
      expect(shown.trimEnd().endsWith("Left. Nothing was kept.")).toBe(true);
    });
  });

  test.each([
    ["self", torso],
    ["helper", ["torso-length", "--measured-by", "helper", "--tool", "tape"]],
  ])("names one number of readings throughout, measured by %s", async (_who, argv) => {
    const { shown } = await walk(argv, `${THROUGH}43 cm\n\nn\n`);
    const text = shown.replace(/\s+/g, " ");
    expect(text).toContain("three readings are common practice, and more are fine");
    expect(text).toContain("Expected: three readings");
    expect(text).not.toMatch(/\b(?:four|4) (?:or more|readings)/);
    const printed = (await runCommand(["guide", ...argv])).stdout.replace(/\s+/g, " ");
    expect(printed).not.toMatch(/\b(?:four|4) (?:or more|readings)/);
  });

  test.each(["dumb", ""])("writes no escape sequence on a terminal of type %j", async (term) => {
    const typed = `\n${THROUGH}43.7 cm\n44.1 cm\n44.3 cm\n\nn\n`;
    const { status, shown } = await walk(["torso-length"], typed, { term });
    expect(status).toBe(0);
    expect(shown).not.toContain("\u001b");
    expect(shown).toContain("Reading 2 is noted.");
    // Promising it would be untrue there.
    expect(shown).not.toContain("disappears");
  });

  test.each([
    [60, 60],
    [20, 40],
    [200, 80],
  ])("on %d columns its lines have at most %d characters", async (columns, most) => {
    const { shown } = await walk([...torso, "--no-ask"], "", { columns });
    const widths = shown.split("\n").map((line) => line.length);
    expect(Math.max(...widths)).toBeLessThanOrEqual(most);
    expect(Math.max(...widths)).toBeGreaterThan(most - 8);
    const walked = await walk(torso, THROUGH, { columns });
    const plain = walked.shown
      .replaceAll("\r", "\n")
      .split("\n")
      .filter((line) => !line.includes("\u001b"));
    expect(Math.max(...plain.map((line) => line.length))).toBeLessThanOrEqual(most);
  });

  test.each([
    ["the input ends before the first step", ""],
    ["the input ends among the steps", "\n\n"],
    ["the input ends among the readings", `${THROUGH}43 cm\n`],
    ["Ctrl-C is pressed among the steps", "\n\u0003"],
    ["Ctrl-C is pressed in a reading", `${THROUGH}43 cm\n4\u0003`],
    ["there is no reading", `${THROUGH}\n`],
  ])("leaves cleanly when %s", async (_when, typed) => {
    const { status, shown, stderr } = await walk(torso, typed, { end: !typed.includes("\u0003") });
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
