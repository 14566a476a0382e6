import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { run } from "../../../packages/duckdb/src/command/run.ts";
import { root } from "../../architecture/workspace.ts";

const folder = mkdtempSync(join(tmpdir(), "tapewise-duckdb-"));
afterAll(() => rmSync(folder, { recursive: true }));
const crew = join(root, "packages/duckdb/demo/crew.csv");
const doily = join(root, "packages/tapewise/demo/charts/thimblewick-doily-45.csv");
const metronome = join(root, "packages/tapewise/demo/charts/gingham-clockwork-metronome-40.json");
const output = join(folder, "choices.csv");

async function call(...argv: readonly string[]) {
  let [out, err] = ["", ""];
  const status = await run(argv, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { status, out, err };
}

describe("tapewise-duckdb", () => {
  test("answers a table, tells how many got no choice, and ends with 1 for their sake", async () => {
    const { status, out, err } = await call(crew, "--chart", doily, metronome, "--output", output);
    expect({ status, out }).toEqual({ status: 1, out: `${output}: 5 people, 1 of them without a choice\n` });
    expect(err).toContain("[table-column-unknown]");
    // A header, two charts for four people, and a line for the one without.
    expect(readFileSync(output, "utf8").trim().split("\n")).toHaveLength(1 + 2 * 4 + 1);
  });

  test("ends with 0 where everybody has a choice", async () => {
    const { status } = await call(
      crew,
      "--chart",
      doily,
      "--output",
      output,
      "--column",
      "torso-length 1 (cm)=torso-length 1 (in)",
    );
    expect(status).toBe(1);
    const people = join(folder, "people.csv");
    expect((await call(output, "--chart", doily, "--output", people)).err).toContain(
      "[table-without-readings]",
    );
  });

  test.each([
    [[], "no table of people is named"],
    [[crew], "no chart is named"],
    [[crew, "--chart", doily], "give --output"],
    [[crew, "--chart", doily, "--output", output, "--prior", "mine"], "not mine"],
    [[crew, "--chart", doily, "--output", output, "--column", "back"], "--column takes"],
    [[crew, "--chart", doily, "--outptu", output], "--outptu"],
    [["nowhere.csv", "--chart", doily, "--output", output], "[file-missing]"],
    [[crew, "--chart", "nowhere.csv", "--output", output], "[file-missing]"],
    [[crew, "--chart", doily, "--output", "choices.txt"], "[table-format-unknown]"],
  ])("a wrong call, %j, ends with 2 and says %s", async (argv, what) => {
    const { status, out, err } = await call(...argv);
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toContain(what);
  });

  test("explains itself, and tells its version", async () => {
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
    expect(await call("--help")).toMatchObject({
      status: 0,
      out: expect.stringContaining("Usage: tapewise-duckdb"),
    });
    expect(await call("--version")).toEqual({ status: 0, out: `${version}\n`, err: "" });
  });

  test("charts of one name are each named with their file", async () => {
    await call(crew, "--chart", doily, doily, "--output", output);
    expect(readFileSync(output, "utf8")).toContain(`Thimblewick Doily 45 (${doily})`);
  });

  test("is there as a program", () => {
    const bin = join(root, "packages/duckdb/bin/tapewise-duckdb.js");
    const { status, stdout } = spawnSync(process.execPath, [bin, "--help"], { encoding: "utf8" });
    expect({ status, isHelp: stdout.startsWith("Usage:") }).toEqual({ status: 0, isHelp: true });
  });
});
