// Lines of a batch: in this process, from bytes to bytes, beside bare JSON of the same lines and beside a composition of
// general-purpose libraries; and the whole command, in one thread and in two, beside a whole program that does bare JSON.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseChart, type SizeChart } from "@tapewise/charts";
import convert from "convert-units";
import { chooseLine } from "tapewise/batch";
import { createBlockAnswerer } from "../packages/tapewise/dist/batch/lane/answer-block.js";
import { createBytePage } from "../packages/tapewise/dist/batch/lane/byte-page.js";
import { type ComposedSize, chooseComposed, type Toolbox, toolboxes } from "./composed.ts";
import { tableOf } from "./growth.ts";
import { inventPeople } from "./people.ts";
import type { Suite } from "./suite.ts";
import { middleRun, type Run, runBare, runBatch } from "./whole-batch.ts";

const LINES = 4000;
const MANY = 1_000_000;
/** So often the file of many lines goes through the pipe to see what memory a long batch takes. */
const TIMES_OVER = 5;
const ROUNDS = 3;
const chartUrl = new URL("../packages/tapewise/demo/charts/thimblewick-doily-45.csv", import.meta.url);

function chartAndLines() {
  const chart = parseChart(readFileSync(chartUrl, "utf8"));
  const lines = [...inventPeople(LINES)];
  return { chart, lines, answers: lines.map((line) => chooseLine(line, [chart])) };
}

/** Millimetres of a length as people write it, such as `43.2 cm` or `17 1/4 in`. */
function millimetresOf(text: string): number {
  const [, whole = "", top, bottom, unit] = /^([\d.]+)(?: (\d+)\/(\d+))? (cm|mm|m|in)$/.exec(text) ?? [];
  const value = Number(whole) + (top === undefined ? 0 : Number(top) / Number(bottom));
  if (unit !== "cm" && unit !== "mm" && unit !== "m" && unit !== "in")
    throw new Error(`${text} is no length`);
  return convert(value).from(unit).to("mm");
}

interface WrittenPerson {
  readonly id: string;
  readonly readings: Readonly<Record<string, readonly string[]>>;
}

/** A line answered by a composition of libraries. */
function composeLine(line: string, sizes: readonly ComposedSize[], toolbox: Toolbox): string {
  const { id, readings }: WrittenPerson = JSON.parse(line);
  const lengths = Object.entries(readings).map(([name, texts]) => [name, texts.map(millimetresOf)] as const);
  return JSON.stringify({ id, ...chooseComposed(Object.fromEntries(lengths), sizes, toolbox) });
}

function composedSizes({ sizes }: SizeChart): readonly ComposedSize[] {
  return sizes.map(({ name, ranges }) => ({
    name,
    ranges: Object.fromEntries(
      Object.entries(ranges).map(([dimension, { interval }]) => [dimension, interval]),
    ),
  }));
}

/** The suite of lines in this process. */
export const batchLinesSuite: Suite = {
  name: "batch",
  title: `${LINES} lines of a batch, bytes in and bytes out`,
  async prepare() {
    const { chart, lines, answers } = chartAndLines();
    const bytes = new TextEncoder().encode(lines.map((line) => `${line}\n`).join(""));
    const answer = createBlockAnswerer([chart], "automatic");
    const page = createBytePage(1 << 20);
    const [decoder, encoder] = [new TextDecoder(), new TextEncoder()];
    const sizes = composedSizes(chart);
    const bare = "bare JSON: bytes to text, every line parsed, every answer written, text to bytes";
    return {
      baseline: bare,
      note:
        "Bare JSON parses the lines that come in and writes the very answers that the batch gives, as objects made before; " +
        "it chooses nothing. The compositions parse the lines, read the lengths with convert-units, and write an object with the " +
        "chances of all sizes; they leave out the prior, expected misfits, verdicts, reasons and further readings.",
      tasks: [
        {
          name: bare,
          work: () => {
            let out = "";
            let count = 0;
            for (const line of decoder.decode(bytes).split("\n")) {
              if (line === "") continue;
              count += Object.keys(JSON.parse(line)).length > 0 ? 1 : 0;
              out += `${JSON.stringify(answers[count - 1])}\n`;
            }
            return encoder.encode(out);
          },
        },
        {
          name: "the same without bytes: lines that are text already, answers that are left as text",
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
          name: "the batch: bytes in, bytes out",
          work: () => {
            page.length = 0;
            answer({ first: 1, bytes }, page);
            return page.length;
          },
        },
        {
          name: "chooseLine, with an object for everything",
          work: () => lines.map((line) => JSON.stringify(chooseLine(line, [chart]))),
        },
        ...Object.entries(toolboxes).map(([name, toolbox]) => ({
          name: `composed: convert-units, ${name}`,
          work: () => lines.map((line) => composeLine(line, sizes, toolbox)),
        })),
      ],
    };
  },
};

/** The suite of the whole command. */
export const batchCommandSuite: Suite = {
  name: "batch",
  title: `The whole command for ${MANY} lines`,
  async prepare() {
    const folder = mkdtempSync(join(tmpdir(), "tapewise-bench-"));
    try {
      const [people, answers] = [join(folder, "people.ndjson"), join(folder, "answers.ndjson")];
      writePeople(people);
      writeFileSync(
        answers,
        chartAndLines()
          .answers.map((one) => `${JSON.stringify(one)}\n`)
          .join(""),
      );
      return { note: await compareWhole(people, answers), tasks: [] };
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};

function writePeople(file: string): void {
  const LUMP = 50_000;
  let lump: string[] = [];
  writeFileSync(file, "");
  const flush = (): void => {
    writeFileSync(file, lump.map((line) => `${line}\n`).join(""), { flag: "a" });
    lump = [];
  };
  for (const line of inventPeople(MANY)) {
    lump.push(line);
    if (lump.length === LUMP) flush();
  }
  flush();
}

async function compareWhole(people: string, answers: string): Promise<string> {
  const chart = fileURLToPath(chartUrl);
  const runs: Record<"bare" | "one" | "two", Run[]> = { bare: [], one: [], two: [] };
  const loads: number[] = [];
  // Side by side: a slow spell of the machine meets all of them.
  for (let round = 0; round < ROUNDS; round += 1) {
    runs.bare.push(await runBare([people], answers));
    runs.one.push(await runBatch([people], chart));
    loads.push(loadavg()[0] ?? 0);
    runs.two.push(await runBatch([people], chart, "--workers", "2"));
  }
  const [bare, one, two] = [middleRun(runs.bare), middleRun(runs.one), middleRun(runs.two)];
  const over = Array.from({ length: TIMES_OVER }, () => people);
  const longOne = await runBatch(over, chart);
  const longTwo = await runBatch(over, chart, "--workers", "2");
  const row = (name: string, { clock, processors, memory }: Run, base: Run) => [
    name,
    (processors / base.processors).toFixed(2),
    (base.clock / clock).toFixed(2),
    clock.toFixed(1),
    processors.toFixed(1),
    memory.toFixed(0),
  ];
  const heads = ["run", "processor time, ratio", "times as fast", "clock, s", "processors, s", "memory, MiB"];
  const lines = (MANY * TIMES_OVER).toLocaleString("en");
  return [
    tableOf(heads, [
      row("bare JSON, a program of its own", bare, bare),
      row("the batch in one thread", one, bare),
      row("the batch with two workers", two, bare),
    ]),
    "",
    `Median of ${ROUNDS} rounds, one after the other in each; ratios to the first row. The batch counts its start; the program with bare JSON, ` +
      "which reads the same file, parses each line and writes an object like its answer to the same place, does not.",
    "",
    tableOf(heads, [
      row(`${lines} lines through a pipe, one thread`, longOne, longOne),
      row(`${lines} lines through a pipe, two workers`, longTwo, longOne),
    ]),
    "",
    `Two workers need two processors to themselves. Load of the machine before they ran: ${loads.map((load) => load.toFixed(1)).join(", ")}.`,
  ].join("\n");
}
