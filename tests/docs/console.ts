import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { root } from "../architecture/workspace.ts";
import type { Block } from "./examples.ts";

/** A command of a console block with the output that the page shows for it. */
export interface Shown {
  readonly line: number;
  readonly command: string;
  readonly output: string;
}

/**
 * Splits a console block: a line that begins with `$ ` is a command, which goes on while lines end
 * with a backslash; what follows up to the next command is its output.
 */
export function splitConsole(block: Block): readonly Shown[] {
  const shown: { line: number; command: string[]; output: string[] }[] = [];
  let open = false;
  for (const [index, line] of block.code.split("\n").entries()) {
    const last = shown.at(-1);
    if (open && last !== undefined) {
      last.command.push(line.replace(/^> /, ""));
      open = line.endsWith("\\");
    } else if (line.startsWith("$ ")) {
      shown.push({ line: block.line + index, command: [line.slice(2)], output: [] });
      open = line.endsWith("\\");
    } else if (last === undefined) {
      throw new Error(`${block.file}:${block.line + index}: output before the first "$ " line`);
    } else {
      last.output.push(line);
    }
  }
  return shown.map(({ line, command, output }) => ({
    line,
    command: command.join("\n"),
    output: output.join("\n").trimEnd(),
  }));
}

// `npx tapewise` and `tapewise` are the built command, and so with tapewise-duckdb, under this very Node; `npx` of anything else
// would reach for the network.
const PRELUDE = `
tapewise() { node packages/tapewise/bin/tapewise.js "$@"; }
tapewise-duckdb() { node packages/duckdb/bin/tapewise-duckdb.js "$@"; }
npx() { if [ "$1" = tapewise ] || [ "$1" = tapewise-duckdb ]; then "$@"; else echo "npx $1 is not run here" >&2; return 127; fi; }
npm() { echo "npm is not run here" >&2; return 127; }
`;

/** Runs a command as a reader would, from the project's folder, and returns what it printed. */
export function runShown(command: string): {
  readonly output: string;
  readonly errors: string;
  readonly status: number;
} {
  const env = {
    ...process.env,
    PATH: `${dirname(process.execPath)}${delimiter}${process.env.PATH ?? ""}`,
    NO_COLOR: "1",
    FORCE_COLOR: undefined,
    TZ: "UTC",
    LC_ALL: "C",
  };
  const shell = existsSync("/bin/bash") ? "/bin/bash" : "sh";
  const { stdout, stderr, status } = spawnSync(shell, ["-c", PRELUDE + command], {
    cwd: join(root),
    env,
    encoding: "utf8",
  });
  return { output: stdout.trimEnd(), errors: stderr.trimEnd(), status: status ?? -1 };
}

/** The exit code that a block announces after its language, as in `console exit=2`; 0 if it says none. */
export function announcedStatus(block: Block): number {
  const flag = block.flags.find((each) => each.startsWith("exit="));
  return flag === undefined ? 0 : Number(flag.slice("exit=".length));
}
