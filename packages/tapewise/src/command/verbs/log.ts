import type { Command } from "commander";
import type { Context } from "../context.ts";
import { addLogAdd } from "./log-add.ts";
import { addLogForget } from "./log-forget.ts";
import { addLogLearned } from "./log-learned.ts";
import { addLogShow } from "./log-show.ts";

const EXAMPLES = `
Examples:
  tapewise log add log.ndjson kept --pseudonym heron --chart chart.csv \\
    --size M --torso-length "44 cm" "43.6 cm"
  tapewise log show log.ndjson
  tapewise log learned log.ndjson --chart chart.csv
  tapewise log forget log.ndjson heron

"tapewise choose --log log.ndjson" goes by what was learned.`;

/** `tapewise log`: what became of choices, and what that says of charts. */
export function addLog(program: Command, context: Context): void {
  const log = program
    .command("log")
    .summary("note down what became of choices, and learn from it how charts are off")
    .description(
      "Keeps what became of packs that were given out, kept or exchanged, in a file of one JSON object a line, and learns from it how the ranges of a maker's charts really sit.",
    )
    .addHelpText("after", EXAMPLES);
  addLogAdd(log, context);
  addLogShow(log, context);
  addLogLearned(log, context);
  addLogForget(log, context);
}
