import { dimensionName } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { type Command, Option } from "commander";
import { issueLine } from "../../batch/issue-line.ts";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import { tapewiseIssues } from "../../issues.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { print, printJson } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { readLength, readProbability } from "../option-numbers.ts";
import { chartOption, jsonOption, requireWords, showUnitOption } from "../options.ts";
import { boundsOf, makePlan, type PlanOptions, type ReadingsPlan } from "../planning/make-plan.ts";
import { addErrorOptions } from "../reading-error.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { planLines } from "../report/plan-lines.ts";
import { sampleData } from "../report/sample-lines.ts";
import { peopleOption } from "../surveyed-people.ts";

interface PlanVerbOptions extends PlanOptions {
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

const EXAMPLES = `
Examples:
  tapewise plan --uncertainty "5 mm" --measured-by helper
  tapewise plan --within "1 cm" --tool tape --afresh
  tapewise plan --chart chart.csv --chance 90% --cut women --measured-by helper
  tapewise plan --uncertainty "4 mm" --per-reading "4.6 mm" --lasting "3.8 mm"

Without a wish it only shows what averaging brings. How many people a study of
reliability needs: tapewise plan-study.`;

/** `tapewise plan`: how many readings to take, and when more of them do not help. */
export function addPlan(program: Command, context: Context): void {
  const plan = program
    .command("plan")
    .summary("tell how many readings to take, and when to fetch a helper instead")
    .description(
      "Tells how many readings a wanted uncertainty, or a wanted chance of the right size, takes; what averaging can do and what it cannot; and what else would help.",
    )
    .optionsGroup("What is wanted:")
    .addOption(new Option("--uncertainty <length>", "standard uncertainty of the mean").argParser(readLength))
    .addOption(
      new Option(
        "--within <length>",
        "the mean lies no further from the truth, with --probability",
      ).argParser(readLength),
    )
    .addOption(
      new Option("--probability <chance>", "how surely within")
        .argParser(readProbability)
        .default(0.95, "95%"),
    )
    .addOption(chartOption())
    .addOption(
      new Option("--chance <chance>", "chance of the right size, for each chart by itself").argParser(
        readProbability,
      ),
    )
    .addOption(peopleOption())
    .optionsGroup("The readings:");
  addErrorOptions(plan, "about how long it is, for the scale of the tool (default: the surveyed mean)")
    .optionsGroup("Output:")
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: PlanVerbOptions) => runPlan(options, plan, context));
}

async function runPlan(options: PlanVerbOptions, command: Command, { io, finish }: Context): Promise<void> {
  requireWords({ ...options }, command);
  if ((options.chart === undefined) !== (options.chance === undefined)) {
    command.error("error: --chart and --chance go together: a chance of the right size on which chart?");
  }
  const { dimension } = options;
  const { loaded, issues: read, status } = await loadCharts(options.chart ?? []);
  finish(status);
  const all = distinctCharts(loaded);
  const charts = all.filter((chart) => boundsOf(chart, dimension).length > 0);
  const issues: readonly Issue[] = [
    ...read,
    ...all
      .filter((chart) => !charts.includes(chart))
      .map(({ chart }) =>
        createIssue(tapewiseIssues, "plan-chart-without-dimension", {
          received: chart,
          facts: { dimension: dimensionName(dimension) },
        }),
      ),
  ];
  if (issues.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  if (issues.length > 0) await print(io.stderr, ["About the charts", ...issueBullets(issues), ""]);
  if (options.chart !== undefined && charts.length === 0) {
    return options.json === true ? printJson(io.stdout, issueLine(null, issues)) : undefined;
  }
  const plan = makePlan(options, charts, command);
  if (options.json === true) return printJson(io.stdout, planData(plan, issues));
  await print(io.stdout, planLines(plan, options.showUnit ?? "cm"));
}

/** A plan for programs. Lengths in mm. */
function planData(plan: ReadingsPlan, issues: readonly Issue[]): unknown {
  const { options, lengthMm, error, basis, conditions, rows, uncertainty, within, instead, ways } = plan;
  const { perReadingMm, lastingMm } = error;
  return {
    asked: options,
    lengthMm,
    error: { perReadingMm, lastingMm, basis, ...(conditions === undefined ? {} : { conditions }) },
    ...(uncertainty === undefined ? {} : { uncertainty }),
    ...(within === undefined ? {} : { within }),
    ...(instead.length === 0 ? {} : { instead }),
    averaging: rows,
    ...(plan.charts.length === 0
      ? {}
      : { cut: plan.people.cut, ...sampleData(plan.people), charts: plan.charts }),
    ...(ways === undefined ? {} : { next: ways }),
    issues: issues.map(summariseIssue),
  };
}
