import { stockFor, stockShares, tryStock, writeShare } from "@tapewise/coverage";
import { type Command, InvalidArgumentError, Option } from "commander";
import { issueLine } from "../../batch/issue-line.ts";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { print, printJson } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { chartOption, jsonOption, requireCharts, requireWords } from "../options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { note, sampleData, sampleLines } from "../report/sample-lines.ts";
import { stockLines } from "../report/stock-lines.ts";
import { type PeopleCut, peopleOption, surveyedPeople } from "../surveyed-people.ts";

type StockOptions = {
  readonly chart?: readonly string[];
  readonly members?: number;
  readonly chance?: number;
  readonly rule?: "flexible" | "each-size";
  readonly cut?: PeopleCut;
  readonly json?: boolean;
};

const EXAMPLES = `
Example:
  tapewise stock --chart chart.csv --members 40 --chance 0.95 --cut women`;

const MOST_MEMBERS = 2000;
const TRIALS = 1000;

/** `tapewise stock`: how many packs of each size a crew needs. */
export function addStock(program: Command, context: Context): void {
  const stock = program
    .command("stock")
    .summary("tell how many of each size to stock for a crew")
    .description(
      "Tells how many packs of each size to stock, so that nobody whom a size fits goes without; each chart by itself.",
    )
    .addOption(chartOption())
    .addOption(
      new Option("--members <number>", "how many people may want a pack at once").argParser(readMembers),
    )
    .addOption(
      new Option("--chance <chance>", "with what chance nobody goes without, such as 0.95").argParser(
        readChance,
      ),
    )
    .addOption(
      new Option(
        "--rule <rule>",
        "flexible: whoever fits two sizes takes the one that is left; each-size: everybody takes the best one (default: flexible)",
      ).choices(["flexible", "each-size"]),
    )
    .addOption(peopleOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: StockOptions) => runStock(options, stock, context));
}

async function runStock(options: StockOptions, command: Command, { io, finish }: Context): Promise<void> {
  requireWords(options, command);
  const members =
    options.members ?? command.error("error: no number of people is given; say for example --members 40");
  const chance = options.chance ?? command.error("error: no chance is given; say for example --chance 0.95");
  const { loaded, issues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (issues.length > 0) await print(io.stderr, ["About the charts", ...issueBullets(issues), ""]);
  if (loaded.length === 0) {
    return options.json === true ? printJson(io.stdout, issueLine(null, issues)) : undefined;
  }
  const charts = distinctCharts(loaded);
  const people = surveyedPeople(options.cut, charts);
  const request = { members, chance, ...(options.rule === undefined ? {} : { rule: options.rule }) };
  const answers = charts.map((chart) => ({
    chart: chart.chart,
    stock: stockFor(chart, people.population, request),
    shares: stockShares(chart, people.population),
  }));
  const told = answers.flatMap(({ stock }) => stock.issues);
  if (told.some((issue) => issue.severity === "error")) finish(EXIT.issues);
  const done = answers.flatMap(({ chart, stock, shares }) => {
    if (!stock.ok || !shares.ok) return [];
    const counts = stock.value.sizes.map(({ count }) => count);
    const found = charts.find((one) => one.chart === chart);
    const tried = found && tryStock(found, people.population, { members, counts, trials: TRIALS });
    return tried?.ok === true
      ? [{ chart, stock: stock.value, shares: shares.value, tried: tried.value }]
      : [];
  });
  if (options.json === true) {
    return printJson(io.stdout, {
      cut: people.cut,
      ...sampleData(people),
      chanceAsked: chance,
      charts: done.map(({ chart, stock: { people: _, ...stock }, shares, tried }) => ({
        chart,
        ...stock,
        shares: shares.sizes,
        unserved: shares.unserved,
        tried,
      })),
      issues: told.map(summariseIssue),
    });
  }
  if (done.length === 0) return print(io.stderr, issueBullets(told, { margin: "" }));
  await print(io.stdout, [
    ...done.flatMap(({ chart, stock, shares, tried }) => [
      ...stockLines(chart, stock, shares, chance),
      ...note(
        `Tried on ${tried.trials} crews drawn at random: enough for ${writeShare(tried.enough)} of them.`,
      ),
      "",
    ]),
    ...(told.length > 0 ? ["Worth knowing", ...issueBullets(told), ""] : []),
    ...sampleLines(people),
  ]);
}

function readMembers(text: string): number {
  const members = Number(text);
  if (/^\d+$/.test(text) && members >= 1 && members <= MOST_MEMBERS) return members;
  throw new InvalidArgumentError(`It must be a whole number from 1 to ${MOST_MEMBERS}.`);
}

function readChance(text: string): number {
  const chance = Number(text);
  if (/^0?\.\d+$/.test(text) && chance > 0 && chance < 1) return chance;
  throw new InvalidArgumentError("It must be a number between 0 and 1, such as 0.95.");
}
