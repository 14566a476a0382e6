import { readdir, readFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { cwd } from "node:process";
import { fileURLToPath } from "node:url";
import type { SizeChart } from "@tapewise/charts";
import type { Verdict } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import type { Command } from "commander";
import { type Answer, answerPerson } from "../../person/answer-person.ts";
import type { Context } from "../context.ts";
import { shellWord } from "../guide/shell-word.ts";
import { print, printJson } from "../io.ts";
import { loadCharts } from "../load-charts.ts";
import { jsonOption } from "../options.ts";
import { jointChance } from "../report/chance.ts";
import { detailedChoice } from "../report/detailed-choice.ts";
import { reportAnswer } from "../report/report-answer.ts";
import { cleanWord } from "../text/clean.ts";
import { shorten } from "../text/display-width.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";

/** `tapewise demo`: the main job on invented people and packs. */
export function addDemo(program: Command, context: Context): void {
  program
    .command("demo")
    .summary("see it at work on invented people and packs")
    .description(
      "Chooses packs from the lending shelf of an invented trail crew, and tells how to use your own data.",
    )
    .addOption(jsonOption())
    .action((options: { readonly json?: boolean }) => runDemo(options.json === true, context));
}

/** The folder of the shelf, which is the same number of steps from the sources and from what is built. */
function shelf(): string {
  return fileURLToPath(new URL("../../../demo/", import.meta.url));
}

async function runDemo(json: boolean, { io }: Context): Promise<void> {
  const folder = join(shelf(), "charts");
  const files = (await readdir(folder)).sort().map((name) => join(folder, name));
  // The shelf has faulty charts on purpose: what is wrong with them is no fault of this call.
  const { loaded, issues } = await loadCharts(files);
  const charts = loaded.map(({ chart }) => chart);
  const people = (await readFile(join(shelf(), "crew.ndjson"), "utf8"))
    .split("\n")
    .filter((line) => line !== "");
  const answers = people.map((line) => unwrap(answerPerson(JSON.parse(line), charts)));
  if (json) return printJson(io.stdout, answers.map(detailedChoice));

  const [shown] = answers;
  if (shown === undefined) return;
  await print(io.stdout, [
    ...wrap(
      `A volunteer trail crew lends packs to its members. The shelf holds ${charts.length} packs of four makers, and no two charts are made alike. People, packs and makers are invented.`,
    ),
    "",
    ...wrap(`First ${nameOf(shown)}, whose readings are held against every pack on it:`),
    "",
    // The card of the best pack only: eight of them would bury the point.
    ...reportAnswer(shown, charts, { mostCards: 1 }),
    "",
    "All members against all packs:",
    "",
    ...crewTable(answers, charts),
    "",
    ...wrap(
      `In reading the charts, ${issues.length} things were found wrong or doubtful; "tapewise audit" tells them, and more.`,
    ),
    "",
    ...usage(files[0] ?? ""),
  ]);
}

/** Every member against every pack: the best size's chance in per cent, and a letter for the verdict. */
function crewTable(answers: readonly Answer[], charts: readonly SizeChart[]): string[] {
  const rows = answers.map(({ line, packs }) => {
    const cells = charts.map((_, index) => {
      const found = packs.find((pack) => pack.index === index)?.recommendation;
      return found === undefined ? "-" : `${shortPercent(jointChance(found))}${LETTERS[found.verdict]}`;
    });
    const [best] = packs;
    return [
      String(line.id),
      ...cells,
      best === undefined ? "-" : `${best.index + 1} in ${shorten(cleanWord(best.recommendation.pick), 10)}`,
    ];
  });
  const numbers = charts.map((_, index) => String(index + 1));
  return [
    ...charts.map(({ chart }, index) => `  ${index + 1} ${cleanWord(chart)}`),
    "",
    ...table(["member", ...numbers, "best"], rows, ["left", ...charts.map(() => "right" as const), "left"]),
    "",
    ...wrap(
      "The figures are per cent, pack and hip belt together; f fits, t two sizes fit, b between sizes, o outside the chart, m measure again first.",
    ),
  ];
}

const LETTERS: Readonly<Record<Verdict, string>> = {
  fits: "f",
  "two-sizes-fit": "t",
  "between-sizes": "b",
  "outside-the-range": "o",
  "measure-again": "m",
};

function shortPercent(probability: number): string {
  if (probability < 0.01) return "<1";
  return probability > 0.99 ? ">99" : String(Math.round(probability * 100));
}

function usage(chart: string): string[] {
  const path = (file: string): string => shellWord(relative(cwd(), file) || ".");
  return [
    "With readings and charts of your own (these lines work as they stand):",
    "",
    '  npx tapewise choose --torso-length "43.2 cm" "44 cm" "43.6 cm" \\',
    `    --chart ${path(chart)}`,
    `  npx tapewise audit ${path(join(shelf(), "charts", "oboe-and-turnip-butter-dish-50.csv"))}`,
    `  npx tapewise batch --chart ${path(chart)} \\`,
    `    < ${path(join(shelf(), "crew.ndjson"))}`,
    "  npx tapewise guide torso-length",
    "",
    "A chart is a CSV file like this one, or JSON (npx tapewise schema chart):",
    "",
    "  size,torso-length (cm),hip-belt-girth (cm),capacity (L)",
    "  S,38-43,70-98,43",
    '  M,46,"<104",45',
    "  L,48+,80-120,48",
  ];
}

function nameOf({ line }: Answer): string {
  const name = String(line.id);
  return name.slice(0, 1).toUpperCase() + name.slice(1);
}
