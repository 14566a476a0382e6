import { formatIssue } from "@tapewise/outcome";
import type { Command } from "commander";
import { answerRawLine, LONGEST_LINE } from "../../batch/answer-raw-line.ts";
import { isChoice } from "../../batch/is-choice.ts";
import { createLineSplitter, type RawLine } from "../../batch/line-splitter.ts";
import type { PriorChoice } from "../../person/choose-prior.ts";
import type { Context } from "../context.ts";
import { EXIT, graver } from "../exit-status.ts";
import { print, write } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { chartOption, priorOption, requireCharts } from "../options.ts";
import { readInput } from "../read-input.ts";
import { cleanJson } from "../text/clean.ts";

interface BatchOptions {
  readonly chart?: readonly string[];
  readonly prior?: Exclude<PriorChoice, "automatic">;
}

const EXAMPLES = `
Every line of the input is one person, every line of the output the answer to
one, in the same order:

  {"id":"p1","readings":{"torso-length":["43.2 cm","44 cm"]}}
  {"id":"p1","estimates":{...},"choices":[{"chart":"...","pick":"M",...}]}

A line that cannot be answered gives {"id":...,"issues":[...]} in its place, and
the exit status is 1 after all lines are done. Blank lines have no answer. See
"tapewise schema person" and "tapewise schema choice" for the exact form.

Example:
  tapewise batch --chart a.csv b.json < people.ndjson > choices.ndjson`;

/** `tapewise batch`: people in, choices out, line by line. */
export function addBatch(program: Command, context: Context): void {
  const batch = program
    .command("batch")
    .summary("answer many people, one JSON line each")
    .description("Reads people as JSON lines from standard input and writes a choice for each, line by line.")
    .addOption(chartOption())
    .addOption(priorOption())
    .addHelpText("after", EXAMPLES)
    .action((options: BatchOptions) => runBatch(options, batch, context));
}

async function runBatch(options: BatchOptions, command: Command, { io, finish }: Context): Promise<void> {
  const files = requireCharts(options, command);
  const { loaded, issues, status } = await loadCharts(files);
  await print(io.stderr, issues.map(formatIssue));
  if (loaded.length < files.length) {
    // Without one of its charts every line would look answered and not be.
    return finish(graver(status, EXIT.issues));
  }
  if (io.stdin.isTTY === true) {
    await print(io.stderr, ["Type people as JSON, one a line; Ctrl-D on an empty line ends the list."]);
  }
  const charts = distinctCharts(loaded);
  const prior: PriorChoice = options.prior ?? "automatic";
  const splitter = createLineSplitter(LONGEST_LINE);
  let anyBad = false;
  const answer = (lines: readonly RawLine[]): string => {
    let text = "";
    for (const line of lines) {
      const answered = answerRawLine(line, charts, { prior });
      if (answered === undefined) continue;
      anyBad ||= !isChoice(answered);
      text += `${cleanJson(answered)}\n`;
    }
    return text;
  };

  let reads = true;
  for await (const chunk of readInput(io)) {
    const text = answer(splitter.push(chunk));
    reads = text === "" || (await write(io.stdout, text));
    // The reader has left, as `head` does: what is still to come would go nowhere.
    if (!reads) break;
  }
  if (reads) {
    const rest = answer(splitter.end());
    if (rest !== "") await write(io.stdout, rest);
  }
  finish(anyBad ? graver(status, EXIT.issues) : status);
}
