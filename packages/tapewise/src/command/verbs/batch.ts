import { formatIssue, type Issue, type Outcome } from "@tapewise/outcome";
import { type Command, InvalidArgumentError, Option } from "commander";
import { LONGEST_LINE } from "../../batch/answer-raw-line.ts";
import { createBlockAnswerer } from "../../batch/lane/answer-block.ts";
import { createLineBlocks, type LineBlock } from "../../batch/lane/line-blocks.ts";
import type { PriorChoice } from "../../person/choose-prior.ts";
import { answerInWorkers } from "../batch/answer-in-workers.ts";
import { answerHere } from "../batch/answerers.ts";
import { type OutputFile, resumeOutput, startOutput } from "../batch/output-file.ts";
import { createProgress } from "../batch/progress.ts";
import { createPump } from "../batch/pump.ts";
import { createSkipper } from "../batch/skip-answered.ts";
import { writeToFile, writeToStream } from "../batch/write-bytes.ts";
import type { Context } from "../context.ts";
import { EXIT, type ExitStatus, graver } from "../exit-status.ts";
import { print } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { chartOption, priorOption, requireCharts } from "../options.ts";
import { readInput } from "../read-input.ts";

interface BatchOptions {
  readonly chart?: readonly string[];
  readonly prior?: Exclude<PriorChoice, "automatic">;
  readonly output?: string;
  readonly resume?: string;
  readonly workers: number;
  readonly progress?: boolean;
}

const EXAMPLES = `
Every line of the input is one person, every line of the output the answer to
one, in the same order:

  {"id":"p1","readings":{"torso-length":["43.2 cm","44 cm"]}}
  {"id":"p1","estimates":{...},"choices":[{"chart":"...","pick":"M",...}]}

A line that cannot be answered gives {"id":...,"issues":[...]} in its place, and
the exit status is 1 after all lines are done. Blank lines have no answer. See
"tapewise schema person" and "tapewise schema choice" for the exact form.

A batch that was ended before its time goes on where it stood, if the same input
is given again: a torn last line is cut off, and what is answered passed over.

Examples:
  tapewise batch --chart a.csv b.json < people.ndjson > choices.ndjson
  tapewise batch --chart a.csv --resume choices.ndjson < people.ndjson`;

/** More threads than this are a slip of the keyboard. */
const MOST_WORKERS = 256;

/** `tapewise batch`: people in, choices out, line by line. */
export function addBatch(program: Command, context: Context): void {
  const batch = program
    .command("batch")
    .summary("answer many people, one JSON line each")
    .description("Reads people as JSON lines from standard input and writes a choice for each, line by line.")
    .addOption(chartOption())
    .addOption(priorOption())
    .addOption(new Option("--output <file>", "write the answers to a file in place of standard output"))
    .addOption(
      new Option("--resume <file>", "go on with the answers in a file, or begin it").conflicts("output"),
    )
    .addOption(
      new Option("--workers <count>", "threads to answer in").default(1).argParser((text: string) => {
        const count = /^[0-9]+$/.test(text) ? Number(text) : 0;
        if (count >= 1 && count <= MOST_WORKERS) return count;
        throw new InvalidArgumentError(`It takes a whole number from 1 to ${MOST_WORKERS}.`);
      }),
    )
    .addOption(
      new Option("--progress", "tell on standard error how far it has come (at a terminal it does anyway)"),
    )
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
  const output = await openOutput(options);
  if (output?.ok === false) return finish(graver(status, await tell(output.issues, io, EXIT.misuse)));
  if (io.stdin.isTTY === true) {
    await print(io.stderr, ["Type people as JSON, one a line; Ctrl-D on an empty line ends the list."]);
  }
  const charts = distinctCharts(loaded);
  const prior: PriorChoice = options.prior ?? "automatic";
  const before = output?.value;
  const progress = createProgress(io.stderr, options.progress === true);
  const skipper =
    before === undefined || before.lines === 0
      ? undefined
      : createSkipper(options.resume ?? "", before, createBlockAnswerer(charts, prior));
  const answerers =
    options.workers > 1 ? answerInWorkers(options.workers, { charts, prior }) : answerHere(charts, prior);
  const pump = createPump(
    answerers,
    before === undefined ? writeToStream(io.stdout) : writeToFile(before.handle, before.length),
    (bytes) => progress.add(bytes),
  );
  try {
    const blocks = createLineBlocks(LONGEST_LINE);
    const takeAll = async (list: readonly LineBlock[]): Promise<boolean> => {
      for (const block of list) {
        const rest = skipper === undefined ? block : skipper.rest(block);
        if (skipper?.fault() !== undefined) return false;
        if (rest !== undefined && !(await pump.take(rest))) return false;
      }
      return true;
    };
    let reads = true;
    for await (const chunk of readInput(io)) {
      reads = await takeAll(blocks.push(chunk));
      // The reader has left, as `head` does: what is still to come would go nowhere.
      if (!reads) break;
    }
    if (reads) await takeAll(blocks.end());
    const isAnyBad = await pump.end();
    progress.end();
    const fault = reads ? skipper?.faultAtEnd() : skipper?.fault();
    if (fault !== undefined) return finish(graver(status, await tell([fault], io, EXIT.issues)));
    finish(isAnyBad || before?.anyBad === true ? graver(status, EXIT.issues) : status);
  } finally {
    await answerers.close();
    await before?.handle.close();
  }
}

async function openOutput({ output, resume }: BatchOptions): Promise<Outcome<OutputFile> | undefined> {
  if (resume !== undefined) return resumeOutput(resume);
  return output === undefined ? undefined : startOutput(output);
}

async function tell(issues: readonly Issue[], io: Context["io"], status: ExitStatus): Promise<ExitStatus> {
  await print(io.stderr, issues.map(formatIssue));
  return status;
}
