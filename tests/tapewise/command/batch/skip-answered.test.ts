import { type ChildProcess, spawn } from "node:child_process";
import { createReadStream, readFileSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { createRandom } from "@tapewise/statistics";
import { beforeAll, describe, expect, test } from "vitest";
import { runCommand } from "../../run-command.ts";
import { batchFolder, crewOf } from "./crew.ts";

const people = crewOf(6000);
const input = `${people.join("\n")}\n`;
const at = batchFolder(people);
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
