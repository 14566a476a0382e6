// Lines of a batch, answered in this process, beside the bare JSON of the same lines; and the whole command in one
// thread and in two.
import { spawnSync } from "node:child_process";
import { mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseChart } from "@tapewise/charts";
import { chooseLine } from "tapewise/batch";
import { createBlockAnswerer } from "../packages/tapewise/dist/batch/lane/answer-block.js";
import { createBytePage } from "../packages/tapewise/dist/batch/lane/byte-page.js";
import { inventPeople } from "./people.ts";
import type { Suite } from "./suite.ts";

const LINES = 400;
const MANY = 200_000;
const chartUrl = new URL("../packages/tapewise/demo/charts/thimblewick-doily-45.csv", import.meta.url);

/** What the whole command takes for many lines: seconds on the clock and of the processors, and MiB at most. */
function runWhole(people: string, ...argv: readonly string[]) {
  const script = `
    const start = performance.now();
    process.argv.splice(1, 1);
    process.on("exit", () => {
      const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
      console.error(JSON.stringify([(performance.now() - start) / 1e3, (userCPUTime + systemCPUTime) / 1e6, maxRSS / 1024]));
    });
    await import(${JSON.stringify(new URL("../packages/tapewise/dist/command/main.js", import.meta.url).href)})
      .then(({ main }) => main(process.argv.slice(1)));`;
  const input = openSync(people, "r");
  const charts = ["batch", "--chart", fileURLToPath(chartUrl)];
  const ran = spawnSync(
    process.execPath,
    ["--input-type=module", "-e", script, "--", "-", ...charts, ...argv],
    {
      stdio: [input, "ignore", "pipe"],
      encoding: "utf8",
    },
  );
  if (ran.status !== 0) throw new Error(`the batch has ended with ${ran.status}: ${ran.stderr}`);
  const [clock = 0, processors = 0, memory = 0] = JSON.parse(
    ran.stderr.trim().split("\n").at(-1) ?? "[]",
  ) as number[];
  return { clock, processors, memory };
}

/** The suite of the batch. */
export const batchSuite: Suite = {
  title: `${LINES} lines of a batch against one chart`,
  async prepare() {
    const chart = parseChart(readFileSync(chartUrl, "utf8"));
    const lines = [...inventPeople(LINES)];
    const answers = lines.map((line) => chooseLine(line, [chart]));
    const written = answers.map((answer) => JSON.stringify(answer));
    const bytes = new TextEncoder().encode(lines.map((line) => `${line}\n`).join(""));
    const answer = createBlockAnswerer([chart], "automatic");
    const page = createBytePage(1 << 20);

    const folder = mkdtempSync(join(tmpdir(), "tapewise-bench-"));
    const people = join(folder, "people.ndjson");
    writeFileSync(people, `${[...inventPeople(MANY)].join("\n")}\n`);
    const [one, two] = [runWhole(people), runWhole(people, "--workers", "2")];
    rmSync(folder, { recursive: true });
    const load = loadavg()[0]?.toFixed(1);
    const told = ({ clock, processors, memory }: typeof one) =>
      `${clock.toFixed(2)} s on the clock, ${processors.toFixed(2)} s of the processors, ${memory.toFixed(0)} MiB`;
    return {
      baseline: "bare JSON: every line parsed, every answer written",
      note:
        `The whole command, start included, for ${MANY} lines: in one thread ${told(one)}; with two workers ${told(two)}, ` +
        `${(one.clock / two.clock).toFixed(2)} times as fast on the clock. Load of the machine at the time: ${load}; ` +
        `two workers need two processors to themselves.`,
      tasks: [
        {
          name: "bare JSON: every line parsed, every answer written",
          work: () => {
            let sum = 0;
            for (let k = 0; k < LINES; k += 1) {
              sum += Object.keys(JSON.parse(lines[k] as string)).length;
              sum += JSON.stringify(answers[k]).length;
            }
            return sum;
          },
        },
        {
          name: "bare JSON: lines and answers both parsed and written",
          work: () => {
            let sum = 0;
            for (const text of lines) sum += JSON.stringify(JSON.parse(text)).length;
            for (const text of written) sum += JSON.stringify(JSON.parse(text)).length;
            return sum;
          },
        },
        {
          name: "lines answered, bytes in and bytes out",
          work: () => {
            page.length = 0;
            answer({ first: 1, bytes }, page);
            return page.length;
          },
        },
        {
          name: "lines answered with an object for everything",
          work: () => lines.map((line) => JSON.stringify(chooseLine(line, [chart]))),
        },
      ],
    };
  },
};
