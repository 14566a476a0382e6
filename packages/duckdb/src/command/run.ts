/// <reference types="node" />
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { outcome } from "tapewise";
import type { PriorChoice } from "tapewise/batch";
import { answerTable } from "../table/answer-table.ts";
import { loadCharts } from "./load-charts.ts";

/** Where the command writes. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

const USAGE = `Usage: tapewise-duckdb <people> --chart <files...> --output <file> [options]

Reads people from a table in Parquet or CSV and writes a table of choices in
either: a row for each person and chart, in flat memory.

  --chart <files...>        size charts to choose from, CSV or JSON
  --output <file>           where the choices go: a path ending in .parquet or .csv
  --column <name=header>    what a column holds that is called otherwise; repeat it
  --prior <which>           none or reference, as for "tapewise batch"
  --version                 print the version
  --help                    explain

A header is a field of a person ("id", "cut", "stature (cm)", "measuredBy"), or
a dimension with the number of the reading and the unit of bare numbers:
"torso-length 1 (cm)". A column of Parquet may hold lists of readings.

Exit status: 0 an answer, 1 issues in the data, 2 a wrong call, 70 a fault of
tapewise-duckdb itself.

Example:
  tapewise-duckdb people.parquet --chart chart.json --output choices.parquet \\
    --column "back=torso-length (cm)"
`;

const [ANSWER, ISSUES, MISUSE, FAULT] = [0, 1, 2, 70];
/** Issues about what was called, and not about what is in the tables. */
const OF_THE_CALL: readonly string[] = [
  "file-missing",
  "file-is-directory",
  "file-unreadable",
  "table-column-missing",
  "table-format-unknown",
  "table-output-is-input",
  "table-unwritable",
];

/** Runs the command with the words after its name, and resolves to its exit status. */
export async function run(argv: readonly string[], { out, err }: Streams): Promise<number> {
  try {
    const call = readCall(argv);
    if (typeof call === "string") {
      err(`error: ${call}\nSee tapewise-duckdb --help.\n`);
      return MISUSE;
    }
    if ("text" in call) {
      out(call.text);
      return ANSWER;
    }
    const tell = (issues: readonly outcome.Issue[]) => {
      for (const issue of issues) err(`${outcome.printable(outcome.formatIssue(issue))}\n`);
    };
    const loaded = await loadCharts(call.charts);
    tell(loaded.issues);
    if (!loaded.isWhole) return gravest(loaded.issues);
    const { input, output, columns, prior } = call;
    const answered = await answerTable({ input, output, columns, prior, charts: loaded.charts });
    tell(answered.issues);
    if (!answered.ok) return gravest(answered.issues);
    const { people, withoutChoice, unreadable } = answered.value;
    const lost = unreadable === 0 ? "" : `, ${unreadable} lines that are no row`;
    out(`${output}: ${people} people, ${withoutChoice} of them without a choice${lost}\n`);
    return withoutChoice + unreadable === 0 ? gravest(loaded.issues) : ISSUES;
  } catch (error) {
    const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    err(`tapewise-duckdb: this should not have happened; please report it: ${outcome.printable(what)}\n`);
    return FAULT;
  }
}

function gravest(issues: readonly outcome.Issue[]): number {
  const errors = issues.filter(({ severity }) => severity === "error");
  if (errors.some(({ code }) => OF_THE_CALL.includes(code))) return MISUSE;
  return errors.length > 0 ? ISSUES : ANSWER;
}

interface Call {
  readonly input: string;
  readonly output: string;
  readonly charts: readonly string[];
  readonly columns: Readonly<Record<string, string>>;
  readonly prior: PriorChoice;
}

/** What is asked for; a text tells what is wrong with the call. */
function readCall(argv: readonly string[]): Call | { readonly text: string } | string {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(argv);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
  const { values, positionals } = parsed;
  if (values.help === true) return { text: USAGE };
  if (values.version === true) return { text: `${readVersion()}\n` };
  const [input, ...others] = positionals;
  if (input === undefined) return "no table of people is named";
  // Files after --chart are charts too, as for the other command.
  const charts = [...(values.chart ?? []), ...others];
  if (values.chart === undefined) return "no chart is named; give --chart";
  if (values.output === undefined) return "nothing is said of where the choices go; give --output";
  const { prior = "automatic" } = values;
  if (prior !== "automatic" && prior !== "none" && prior !== "reference") {
    return `--prior takes none or reference, and not ${prior}`;
  }
  const columns = new Map<string, string>();
  for (const text of values.column ?? []) {
    const at = text.lastIndexOf("=");
    if (at < 1)
      return `--column takes a name and a header, such as "back=torso-length (cm)", and not ${text}`;
    columns.set(text.slice(0, at), text.slice(at + 1));
  }
  return { input, output: values.output, charts, columns: Object.fromEntries(columns), prior };
}

function parse(argv: readonly string[]) {
  return parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      chart: { type: "string", multiple: true },
      column: { type: "string", multiple: true },
      output: { type: "string" },
      prior: { type: "string" },
      help: { type: "boolean" },
      version: { type: "boolean" },
    },
  });
}

function readVersion(): string {
  const manifest = new URL("../../package.json", import.meta.url);
  return JSON.parse(readFileSync(manifest, "utf8")).version;
}
