// Measures how good the choices are, on people whose torso length is known.
//   npm run check:choice -- --people FOLDER [--repeats N] [--cells error=6/8,chart=wide] [--json] [--write]
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { readPeople, redrawTorsos } from "./people.ts";
import { dataOf, findingsOf, type Run, reportRun } from "./report.ts";
import { runStudy, type Task } from "./run-study.ts";
import { cellFilter } from "./settings.ts";

const NOT_RUN = `The check of the choices did NOT run: it needs a folder of individual measurements.

  npm run check:choice -- --people FOLDER

FOLDER holds ansur-ii-female-even-subjects.csv and ansur-ii-male-even-subjects.csv (ANSUR II, public).
  --repeats N   simulated sets of readings for each person (4)
  --cells LIST  only some cells, e.g. error=6/8,rounding=5mm,readings=3,chart=wide
  --seed N      seed of everything drawn (1)
  --threads N   threads to work in (as many as there are processors)
  --main-only   without the two controls
  --json        the figures of every cell as JSON in place of tables
  --write       also write RESULTS.md beside this file
`;

const { values } = parseArgs({
  options: {
    people: { type: "string" },
    repeats: { type: "string", default: "4" },
    cells: { type: "string", default: "" },
    seed: { type: "string", default: "1" },
    threads: { type: "string", default: String(availableParallelism()) },
    "main-only": { type: "boolean", default: false },
    json: { type: "boolean", default: false },
    write: { type: "boolean", default: false },
  },
});

if (values.people === undefined) {
  process.stderr.write(NOT_RUN);
  process.exitCode = 2;
} else await main(values.people);

async function main(folder: string): Promise<void> {
  const repeats = wholeNumber("--repeats", values.repeats);
  const seed = wholeNumber("--seed", values.seed);
  const threads = wholeNumber("--threads", values.threads);
  cellFilter(values.cells);
  const people = readPeople(folder);
  const options = { repeats, seed, dither: true, draws: 100, mistaken: true };
  const main: Task = { people, cells: values.cells, options };
  const runs: Run[] = [
    await run(
      "Real people, dithered",
      "True torso lengths are put back within the rounding of the survey's heights: the difference of two whole millimetres, plus two independent errors uniform within ± 0.5 mm.",
      main,
      threads,
    ),
  ];
  if (!values["main-only"]) {
    const control = { ...options, repeats: Math.ceil(repeats / 2), mistaken: false };
    runs.push(
      await run(
        "Control: whole millimetres",
        "The same people with their torso lengths as printed, in whole millimetres. A closed interval then holds a millimetre more than it is long, so that sizes fit a little more often than any continuous model can say.",
        { ...main, options: { ...control, dither: false } },
        threads,
      ),
      await run(
        "Control: torso lengths drawn from the prior",
        "The same people's cuts and statures with torso lengths drawn from the library's own prior. What is amiss here comes from the library's arithmetic or from sampling; what is amiss only above comes from people who are not as the prior has them.",
        { ...main, people: redrawTorsos(people, seed), options: { ...control, dither: false } },
        threads,
      ),
    );
  }
  const text = [
    "# Quality of choice, measured",
    "",
    "Written by `npm run check:choice -- --people FOLDER --write`. Rules, cells and the floor are described in README.md beside this file.",
    "",
    `People: ${people.filter(({ cut }) => cut === "women").length} women and ${people.filter(({ cut }) => cut === "men").length} men of ANSUR II (Gordon et al. 2014, NATICK/TR-15/007; even subject numbers): soldiers, fitter and younger than most who buy packs.`,
    `Settings: ${repeats} sets of readings a person and cell (half as many in the controls), seed ${seed}${values.cells === "" ? "" : `, cells ${values.cells}`}; Node ${process.version}; commit ${commit()}.`,
    "",
    ...runs.flatMap((one) => [reportRun(one), ""]),
  ].join("\n");
  process.stdout.write(values.json ? `${JSON.stringify(runs.map(dataOf), null, 1)}\n` : text);
  if (values.write) writeFileSync(new URL("RESULTS.md", import.meta.url), text);
  process.exitCode = findingsOf(runs[0]?.cells ?? []).every(({ holds }) => holds) ? 0 : 1;
}

async function run(title: string, note: string, task: Task, threads: number): Promise<Run> {
  const cells = await runStudy(task, threads, (done, of) => {
    process.stderr.write(`${title}: ${done} of ${of} ways of reading\n`);
  });
  return { title, note, cells };
}

function wholeNumber(option: string, text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value) || value < 1) throw new Error(`${option} takes a whole number above 0`);
  return value;
}

function commit(): string {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
}
