import type { Dimension, Way } from "@tapewise/landmarks";
import { safeEstimate, stateEstimate } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { type LengthReading, type LengthUnit, safeParseLength } from "@tapewise/units";
import { type Io, pageWidth, print } from "../io.ts";
import { issueSentence } from "../report/issue-sentence.ts";
import { capitalised } from "../report/words.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { askWay } from "./ask-way.ts";
import { type Asker, createAsker } from "./asker.ts";
import { introduction, landmarkBlocks, wayHead, waySteps } from "./guide-lines.ts";
import { shellWord } from "./shell-word.ts";

/** How a walk through a guide is set up. */
export interface WalkOptions {
  readonly unit?: LengthUnit | undefined;
  readonly showUnit?: "cm" | "in" | undefined;
}

/**
 * Walks a person through taking one dimension in one of the ways that suit: step by step, then reading
 * by reading, each one blind where the terminal can hide it.
 */
export async function walk(
  one: Dimension,
  ways: readonly Way[],
  options: WalkOptions,
  io: Io,
): Promise<void> {
  const asker = createAsker(io);
  const width = pageWidth(io.stdout);
  try {
    const way = await askWay(ways, asker, io);
    if (way === undefined) return await leave(io);
    const blocks = [
      introduction(one, width),
      ...landmarkBlocks(one, width),
      [...wayHead(way, width), ...waySteps(way, width)],
    ];
    for (const block of blocks) {
      await print(io.stdout, [...block, ""]);
      if ((await asker.ask("Press Enter to go on, Ctrl-C to leave. ")) === undefined) return await leave(io);
      await print(io.stdout, [""]);
    }
    const readings = await takeReadings(options, asker, io);
    if (readings === undefined || readings.length === 0) return await leave(io);
    const afresh = await asker.ask("Did you find the bones anew before each reading? (y/n) ");
    await conclude(one, way, readings, { ...options, afresh: /^y/i.test(afresh?.trim() ?? "") }, io);
  } finally {
    asker.close();
  }
}

async function takeReadings(
  options: WalkOptions,
  asker: Asker,
  io: Io,
): Promise<readonly LengthReading[] | undefined> {
  const width = pageWidth(io.stdout);
  const blind = asker.hides
    ? "A reading disappears once it is taken, so that it does not draw the next one towards it."
    : "Do not look back at the readings above: each draws the next one towards it.";
  await print(io.stdout, [
    ...wrap(
      `Now read. Type each reading with its unit, such as 43.2 cm or 17 1/4 in; three readings are common practice, and more are fine. ${blind} An empty line ends the list.`,
      FLUSH,
      width,
    ),
    "",
  ]);
  const readings: LengthReading[] = [];
  for (;;) {
    const text = await asker.ask(`Reading ${readings.length + 1}: `);
    if (text === undefined) return undefined;
    if (text.trim() === "") return readings;
    asker.hideLast();
    const outcome = safeParseLength(text, options.unit === undefined ? {} : { unit: options.unit });
    if (outcome.ok) {
      readings.push(outcome.value);
      await print(io.stdout, [`Reading ${readings.length} is noted.`]);
    } else await print(io.stdout, questionLines(outcome.issues, "", width));
  }
}

interface Conclusion extends WalkOptions {
  readonly afresh: boolean;
}

async function conclude(
  one: Dimension,
  way: Way,
  readings: readonly LengthReading[],
  options: Conclusion,
  io: Io,
): Promise<void> {
  const conditions = { tool: way.tool, measuredBy: way.who, landmarksFoundAfresh: options.afresh };
  const outcome = safeEstimate({ dimension: one.id, readings, conditions });
  const width = pageWidth(io.stdout);
  const inInches = readings.every((reading) => reading.unit === "in" || reading.unit === "ft");
  const unit = options.showUnit ?? (inInches ? "in" : "cm");
  const questions =
    outcome.issues.length === 0 ? [] : ["", "Questions", ...questionLines(outcome.issues, "  ", width)];
  const sentence = outcome.ok
    ? wrap(`${capitalised(stateEstimate(outcome.value, { unit }))}.`, FLUSH, width)
    : [];
  const texts = readings.map((reading) => shellWord(reading.text.trim()));
  const command = [
    "tapewise choose",
    `--${one.id} ${texts.join(" ")}${options.unit === undefined ? "" : ` --unit ${options.unit}`}`,
    `--tool ${way.tool} --measured-by ${way.who}${options.afresh ? " --afresh" : ""}`,
    "--chart chart.csv",
  ];
  await print(io.stdout, [
    "",
    ...sentence,
    ...questions,
    "",
    "To go on, with a size chart of your own:",
    ...command.map(
      (part, index) => `  ${index === 0 ? "" : "  "}${part}${index === command.length - 1 ? "" : " \\"}`,
    ),
  ]);
}

function questionLines(issues: readonly Issue[], margin: string, width: number): string[] {
  return bullets(issues.map(issueSentence), margin, width);
}

const FLUSH = { first: "", rest: "" };

async function leave(io: Io): Promise<void> {
  await print(io.stdout, ["", "Left. Nothing was kept."]);
}
