import { readFileSync } from "node:fs";
import { findDimension } from "@tapewise/landmarks";
import { Command } from "commander";
import type { Context } from "./context.ts";
import { pageWidth } from "./io.ts";
import { cleanLines } from "./text/clean.ts";
import { PAGE_WIDTH } from "./text/wrap.ts";
import { addAudit } from "./verbs/audit.ts";
import { addAverage } from "./verbs/average.ts";
import { addBatch } from "./verbs/batch.ts";
import { addCheck } from "./verbs/check.ts";
import { addChoose } from "./verbs/choose.ts";
import { addCut } from "./verbs/cut.ts";
import { addDemo } from "./verbs/demo.ts";
import { addGuide } from "./verbs/guide.ts";
import { addLend } from "./verbs/lend.ts";
import { addLog } from "./verbs/log.ts";
import { addPlan } from "./verbs/plan.ts";
import { addPlanStudy } from "./verbs/plan-study.ts";
import { addReturns } from "./verbs/returns.ts";
import { addSchema } from "./verbs/schema.ts";
import { addServed } from "./verbs/served.ts";
import { addStock } from "./verbs/stock.ts";
import { addStudy } from "./verbs/study.ts";

const START_HERE = `
Start here:
  tapewise demo                      see it at work on invented data
  tapewise guide torso-length        how to take your own torso length
  tapewise choose --torso-length "43.2 cm" "44 cm" --chart chart.csv

A reading is a number with its unit: "43.2 cm", "17 1/4 in". Every verb explains
itself with --help, and most print JSON for programs with --json.

Exit status: 0 an answer, 1 issues in the data, 2 a wrong call, 70 a fault of
tapewise itself.`;

/** The command line: verbs and their options. */
export function buildProgram(context: Context): Command {
  const { stdout, stderr } = context.io;
  const program = new Command("tapewise")
    .description(
      "From your own tape readings to a pack size, with the measurement error carried into the choice.",
    )
    .version(readVersion(), "--version", "print the version")
    .helpOption("--help", "explain")
    .helpCommand("help [verb]", "explain a verb")
    .exitOverride()
    // Verbs inherit it: what is too much is told below, with what may have been meant.
    .allowExcessArguments()
    .hook("preAction", (_program, verb) => refuseExcessWords(verb))
    .configureOutput({
      writeOut: (text) => stdout.write(cleanLines(text)),
      writeErr: (text) => stderr.write(cleanLines(text)),
      getOutHelpWidth: () => pageWidth(stdout),
      getErrHelpWidth: () => PAGE_WIDTH,
      getOutHasColors: () => false,
      getErrHasColors: () => false,
      outputError: (text, writeOut) => writeOut(withDimension(text)),
    })
    .showHelpAfterError("(add --help for the options of a verb, with examples)")
    .addHelpText("after", START_HERE);
  addDemo(program, context);
  addGuide(program, context);
  addChoose(program, context);
  addCheck(program, context);
  addLog(program, context);
  addAudit(program, context);
  addBatch(program, context);
  addServed(program, context);
  addStock(program, context);
  addLend(program, context);
  addReturns(program, context);
  addCut(program, context);
  addStudy(program, context);
  addPlan(program, context);
  addPlanStudy(program, context);
  addAverage(program, context);
  addSchema(program, context);
  return program;
}

/** An option that nobody knows may be a dimension by another name, such as `--torso` or `--hips`. */
function withDimension(text: string): string {
  const name = /^error: unknown option '--([^'=]+)/.exec(text)?.[1];
  const found = name === undefined ? undefined : findDimension(name);
  if (found === undefined || found.kind === "unknown") return text;
  const meant = found.kind === "match" ? [found.id] : found.candidates;
  const [first = ""] = text.split("\n");
  return `${first}\n(Did you mean ${meant.map((id) => `--${id}`).join(" or ")}?)\n`;
}

/** Ends a call with more words than its verb takes; charts may only lack their option. */
function refuseExcessWords(verb: Command): void {
  const { args, registeredArguments } = verb;
  if (registeredArguments.at(-1)?.variadic === true || args.length <= registeredArguments.length) return;
  const excess = args.slice(registeredArguments.length);
  const areCharts =
    verb.options.some((option) => option.long === "--chart") &&
    excess.every((word) => /\.(?:csv|json)$/i.test(word));
  const hint = areCharts ? `\n(Did you mean --chart ${excess.join(" ")}?)` : "";
  verb.error(`error: too many arguments for '${verb.name()}': ${excess.join(" ")}${hint}`);
}

function readVersion(): string {
  const text = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  const { version } = JSON.parse(text) as { readonly version: string };
  return version;
}
