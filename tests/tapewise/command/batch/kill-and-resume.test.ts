import { type ChildProcess, spawn } from "node:child_process";
import { createReadStream, readFileSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { createRandom } from "@tapewise/statistics";
import { beforeAll, describe, expect, test } from "vitest";
import { inventPeople } from "../../../../benchmarks/people.ts";
import { folderWith, PLAIN_CHART, runCommand } from "../../run-command.ts";

const people = [...inventPeople(6000, 5)];
// A blank line has no answer, and a faulty one has its own.
people.splice(700, 0, "", '{"id":"faulty","readings":{"torso-length":["44"]}}', "  ");
const input = `${people.join("\n")}\n`;
const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "other.csv": PLAIN_CHART.replace("M,42-47", "M,41-46"),
  "people.ndjson": input,
  "fewer.ndjson": `${people.slice(0, 10).join("\n")}\n`,
});
const main = new URL("../../../../packages/tapewise/src/command/main.ts", import.meta.url).href;
const script = `import { main } from ${JSON.stringify(main)}; await main(process.argv.slice(1));`;

/** The command in a process of its own. */
function start(from: string, ...argv: readonly string[]): ChildProcess {
  const child = spawn(
    process.execPath,
    ["--conditions=@tapewise/source", "--input-type=module", "-e", script, "batch", ...argv],
    { stdio: ["pipe", "ignore", "inherit"] },
  );
  if (child.stdin !== null) {
    child.stdin.on("error", () => undefined);
    createReadStream(from).pipe(child.stdin);
  }
  return child;
}

const ended = (child: ChildProcess) =>
  new Promise<number | string | null>((resolve) =>
    child.on("exit", (code, signal) => resolve(signal ?? code)),
  );

/** Waits until a file has grown to so many bytes, and ends the process then, at once. */
async function killAt(child: ChildProcess, file: string, bytes: number): Promise<number | string | null> {
  const end = ended(child);
  const timer = setInterval(() => {
    if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) >= bytes) child.kill("SIGKILL");
  }, 2);
  const how = await end;
  clearInterval(timer);
  return how;
}

let whole = "";
beforeAll(async () => {
  const { status, stdout } = await runCommand(["batch", "--chart", at("plain.csv")], input);
  expect(status).toBe(1);
  whole = stdout;
});

describe("a batch that is killed", () => {
  const random = createRandom(11);

  test.each([
    ["one thread", ["--workers", "1"]],
    ["two workers", ["--workers", "2"]],
  ])("goes on where it stood and gives the same file: %s", async (name, argv) => {
    const file = at(`${name}.ndjson`);
    const kills: (number | string | null)[] = [];
    for (let share = 0; share < 1; ) {
      share = Math.min(1, share + 0.1 + 0.4 * random.uniform());
      const child = start(at("people.ndjson"), "--chart", at("plain.csv"), "--resume", file, ...argv);
      kills.push(await killAt(child, file, share < 1 ? share * whole.length : Number.POSITIVE_INFINITY));
      // A process may be ended in the middle of a line.
      if (share < 1 && kills.at(-1) === "SIGKILL") truncateSync(file, statSync(file).size - 17);
    }
    expect(kills.slice(0, -1)).toContain("SIGKILL");
    expect(kills.at(-1)).toBe(1);
    expect(readFileSync(file, "utf8")).toBe(whole);
  });

  test("is not gone on with where other charts were given", async () => {
    const file = at("charts.ndjson");
    const part = `${whole.split("\n").slice(0, 400).join("\n")}\n`;
    writeFileSync(file, part);
    const ran = await runCommand(["batch", "--chart", at("other.csv"), "--resume", file], input);
    expect([ran.status, ran.stdout]).toEqual([1, ""]);
    expect(ran.stderr).toContain("[batch-resume-differs]");
    expect(readFileSync(file, "utf8")).toBe(part);
  });

  test("is not gone on with where there are more answers than people", async () => {
    const file = at("more.ndjson");
    writeFileSync(file, whole);
    const fewer = readFileSync(at("fewer.ndjson"), "utf8");
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--resume", file], fewer);
    expect(ran.status).toBe(1);
    expect(ran.stderr).toContain("[batch-resume-ahead]");
    expect(readFileSync(file, "utf8")).toBe(whole);
  });

  test("remembers issues of the part before", async () => {
    const file = at("issues.ndjson");
    writeFileSync(file, `${whole.split("\n").slice(0, 800).join("\n")}\n{"id":"to`);
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--resume", file], input);
    expect([ran.status, readFileSync(file, "utf8") === whole]).toEqual([1, true]);
  });
});

describe("a batch in several threads", () => {
  test("gives the same lines in the same order", async () => {
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--workers", "3"], input);
    expect([ran.status, ran.stdout === whole]).toEqual([1, true]);
  });

  test("writes to a file, which it begins anew", async () => {
    const file = at("output.ndjson");
    writeFileSync(file, "something else\n".repeat(1000));
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), "--output", file], input);
    expect([ran.status, ran.stdout]).toEqual([1, ""]);
    expect(readFileSync(file, "utf8")).toBe(whole);
  });

  test.each([
    [["--workers", "0"], "from 1 to 256"],
    [["--workers", "two"], "from 1 to 256"],
    [["--output", "a", "--resume", "b"], "cannot be used with"],
    [["--output", "no/such/folder/a"], "[file-unwritable]"],
  ])("refuses a wrong call: %j", async (argv, said) => {
    const ran = await runCommand(["batch", "--chart", at("plain.csv"), ...argv], "");
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain(said);
  });
});

describe("progress", () => {
  test("is told on standard error where it is asked for, and nowhere else", async () => {
    const [one = ""] = people;
    const asked = await runCommand(["batch", "--chart", at("plain.csv"), "--progress"], `${one}\n${one}\n`);
    expect(asked.stderr).toMatch(/^2 people, \d+ a second\n$/);
    const unasked = await runCommand(["batch", "--chart", at("plain.csv")], `${one}\n`);
    expect(unasked.stderr).toBe("");
  });
});
