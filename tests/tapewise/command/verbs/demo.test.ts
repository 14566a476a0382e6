import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { choiceJsonSchema, personJsonSchema } from "tapewise/schema";
import { describe, expect, test } from "vitest";
import { runCommand } from "../../run-command.ts";

const shelf = fileURLToPath(new URL("../../../../packages/tapewise/demo/", import.meta.url));
const crew = readFileSync(join(shelf, "crew.ndjson"), "utf8").trimEnd().split("\n");
const charts = readdirSync(join(shelf, "charts")).map((name) => join(shelf, "charts", name));

describe("tapewise demo", () => {
  test("shows one member fully and everybody in a table", async () => {
    const { status, stdout, stderr } = await runCommand(["demo"]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain("First Wren");
    expect(stdout).toMatch(/\|-+\*-+\|/);
    for (const line of crew) expect(stdout).toMatch(new RegExp(`^  ${JSON.parse(line).id} `, "m"));
    for (const path of charts) expect(path).toMatch(/\.(?:csv|json)$/);
    expect(stdout.match(/^ {2}\d [A-Z].+ \d\d$/gm)).toHaveLength(charts.length);
  });

  test("keeps to 80 characters, but for the paths of files", async () => {
    const { stdout } = await runCommand(["demo"]);
    const long = stdout.split("\n").filter((line) => line.length > 80 && !line.includes("tapewise/demo/"));
    expect(long).toEqual([]);
  });

  test("prints the choices of the whole crew as JSON", async () => {
    const { stdout } = await runCommand(["demo", "--json"]);
    const validate = new Ajv2020({ strict: false }).compile(choiceJsonSchema());
    const answers = JSON.parse(stdout);
    expect(answers).toHaveLength(crew.length);
    for (const answer of answers) expect(validate(answer), JSON.stringify(validate.errors)).toBe(true);
    // What the shelf is there to show: every verdict occurs.
    const verdicts = new Set(
      answers.flatMap((answer: { choices: { verdict: string }[] }) =>
        answer.choices.map((choice) => choice.verdict),
      ),
    );
    expect([...verdicts].sort()).toEqual([
      "between-sizes",
      "fits",
      "measure-again",
      "outside-the-range",
      "two-sizes-fit",
    ]);
  });

  test("the crew is written in the published form", () => {
    const validate = new Ajv2020({ strict: false }).compile(personJsonSchema());
    for (const line of crew) expect(validate(JSON.parse(line)), JSON.stringify(validate.errors)).toBe(true);
  });

  test("the charts have the faults that they are there to show", async () => {
    const { status, stdout } = await runCommand(["audit", "--json", ...charts]);
    expect(status).toBe(1);
    const found = new Set<string>(
      JSON.parse(stdout).flatMap((one: { findings: { code: string }[] }) =>
        one.findings.map(({ code }) => code),
      ),
    );
    expect([...found]).toEqual(
      expect.arrayContaining([
        "chart-range-reversed",
        "chart-row-ragged",
        "chart-length-suspicious",
        "chart-sizes-out-of-order",
        "chart-statements-disagree",
        "chart-hip-unstated",
        "chart-interval-inferred",
        "chart-gap",
        "chart-overlap",
      ]),
    );
  });

  test("the commands that it ends with work as they stand", async () => {
    const { stdout } = await runCommand(["demo"]);
    const bin = fileURLToPath(new URL("../../../../packages/tapewise/bin/tapewise.js", import.meta.url));
    const commands = stdout
      .replaceAll("\\\n", " ")
      .split("\n")
      .filter((line) => line.startsWith("  npx tapewise "));
    expect(commands).toHaveLength(4);
    for (const command of commands) {
      const line = command.replace("npx tapewise", `"${process.execPath}" "${bin}"`);
      // The audited chart is the faulty one, for which 1 is the right status.
      const text = execFileSync("sh", ["-c", `${line} || [ $? = 1 ]`], {
        encoding: "utf8",
        stdio: ["ignore", "pipe", "pipe"],
      });
      expect(text.length).toBeGreaterThan(100);
    }
  });
});
