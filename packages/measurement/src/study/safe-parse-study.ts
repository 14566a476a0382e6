import { dimensionIds, dimensionName } from "@tapewise/landmarks";
import {
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
  unwrap,
} from "@tapewise/outcome";
import { placesIn } from "@tapewise/tables";
import { lengthUnits } from "@tapewise/units";
import { createStudy } from "./create-study.ts";
import { LONGEST_STUDY_TEXT, MOST_CELLS } from "./data.ts";
import { gatherStudy } from "./gather-study.ts";
import { reportNamesAlike } from "./names-alike.ts";
import { readJson } from "./read-json.ts";
import type { Study } from "./study.ts";
import { type StudyCells, studyCellsOfJson, studyCellsOfTable } from "./study-cells.ts";
import type { StudyOptions } from "./study-options.ts";
import { type StudyReport, studyReport } from "./study-report.ts";

/** Lists in an object in a list are the deepest that a study goes. */
const DEEPEST_JSON = 6;

/**
 * Reads a reliability study: comma, semicolon or tab separated text in the long layout (a row for each reading,
 * with columns such as `subject`, `measurer`, `repeat`, `torso-length (cm)`) or the wide one (a row for each
 * subject, with columns such as `Ann 1 (cm)`, `Ann 2 (cm)`, `Ben 1 (cm)`), or JSON: a list of objects
 * `{"subject", "measurer", "repeat", "value"}`, or an object with such a list as `readings` and, for all of them,
 * a `dimension` and a `unit`. A unit stands in the header, in each cell or in the options; there is no default.
 *
 * Without a column of measurers there is one; without numbers of repeats, readings are counted in their order.
 * What can be read is kept, and everything else is reported with its line and column. An empty cell, `-` or `NA`
 * is missing, not an error. A reading outside the plausible limits of the dimension is reported and set aside,
 * unless `keepImpossible` says otherwise.
 *
 * Issue codes: no value with `study-not-text`, `study-empty`, `study-too-large`, `study-json-syntax`,
 * `study-json-shape`, `study-column-missing`, `study-values-several`, `study-dimension-disagrees`,
 * `study-no-readings`; otherwise `study-column-unused`, `study-column-repeated`, `study-column-unread`,
 * `study-cell-beyond`, `study-quote`, `study-key-repeated`, `study-json-row`, `study-subject-blank`,
 * `study-measurer-blank`, `study-repeat-unreadable`, `study-unit-missing`, `study-cell-repeated`,
 * `study-reading-impossible`, `study-reading-kept`, `study-cells-missing`, `study-names-alike`,
 * `study-dimension-unclear`, `study-dimension-unstated`, and `length-…` of @tapewise/units.
 *
 * @throws {@link InvalidArgumentError} when an option names an unknown dimension, unit, layout, separator or age group.
 *
 * @example
 * ```ts
 * import { safeParseStudy } from "@tapewise/measurement";
 * const text = "subject,Ann 1 (cm),Ann 2 (cm)\nmia,43.2,43.6\nleo,48,-\n";
 * const outcome = safeParseStudy(text, { dimension: "torso-length" });
 * outcome.ok && outcome.value.readings.map((reading) => reading.mm); // => [432, 436, 480]
 * outcome.ok && outcome.value.missing[0]?.place; // => { line: 3, column: 8 }
 * outcome.issues.map((issue) => issue.code); // => ["study-cells-missing"]
 * ```
 */
export function safeParseStudy(text: unknown, options: StudyOptions = {}): Outcome<Study> {
  requireOptions(options);
  const report = studyReport(options.file);
  const at = { line: 1, column: 1 };
  if (typeof text !== "string") return failure([report("study-not-text", { received: text, at })]);
  if (text.length > LONGEST_STUDY_TEXT) {
    const facts = { characters: text.length, limit: LONGEST_STUDY_TEXT };
    return failure([report("study-too-large", { received: text.slice(0, 100), facts, at })]);
  }
  const plain = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (plain.trim() === "") return failure([report("study-empty", { received: text.slice(0, 100), at })]);
  const issues: Issue[] = [];
  const written = cellsOf(plain, options, report, issues);
  if (written === undefined) {
    return hasIssues(issues) ? failure(issues) : failure([report("study-empty", { received: text, at })]);
  }
  return finish(written, options, report, issues);
}

/**
 * As {@link safeParseStudy}, for a study that is known to be readable.
 *
 * @throws `IssuesError` with the issues of {@link safeParseStudy}.
 *
 * @example
 * ```ts
 * import { parseStudy } from "@tapewise/measurement";
 * const study = parseStudy("subject\tmeasurer\trepeat\ttorso (in)\nmia\tAnn\t1\t17\nmia\tBen\t1\t17 1/4\n");
 * study.measurers; // => ["Ann", "Ben"]
 * study.readings.map((reading) => reading.mm); // => [431.8, 438.15]
 * ```
 */
export function parseStudy(text: string, options: StudyOptions = {}): Study {
  return unwrap(safeParseStudy(text, options));
}

function cellsOf(
  text: string,
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): StudyCells | undefined {
  const { layout } = options;
  const isJson = layout === "json" || (layout === undefined && /^\s*[[{]/.test(text));
  if (!isJson) return studyCellsOfTable(text, options, report, issues);
  const read = readJson(text, DEEPEST_JSON, placesIn(text, undefined));
  if ("node" in read) return studyCellsOfJson(read.node, options, report, issues);
  const lines = text.split(/\r\n|\n|\r/);
  const received = lines[read.fault.line - 1]?.slice(read.fault.column - 1, read.fault.column + 19);
  issues.push(report("study-json-syntax", { received: received || "the end of the text", at: read.fault }));
  return undefined;
}

function finish(
  { cells, dimension }: StudyCells,
  options: StudyOptions,
  report: StudyReport,
  issues: Issue[],
): Outcome<Study> {
  const gathered = gatherStudy(cells, dimension, options, report, issues);
  const { readings, missing, setAside } = gathered;
  if (readings.length === 0) {
    const received = cells.length;
    return failure([
      report("study-no-readings", { received, facts: { setAside: setAside.length } }),
      ...issues,
    ]);
  }
  const subjects = [...new Set(cells.map((cell) => cell.subject))];
  const measurers = [...new Set(cells.map((cell) => cell.measurer))];
  const repeats = [...readings, ...missing, ...setAside].reduce(
    (most, { repeat }) => Math.max(most, repeat),
    0,
  );
  const grid = subjects.length * measurers.length * repeats;
  if (grid > MOST_CELLS) {
    return failure([
      report("study-too-large", { received: grid, facts: { characters: grid, limit: MOST_CELLS } }),
    ]);
  }
  const study = createStudy({ dimension, readings, missing, setAside, subjects, measurers });
  issues.push(...reportNamesAlike(subjects, "subjects", report));
  issues.push(...reportNamesAlike(measurers, "measurers", report));
  if (dimension === undefined) {
    issues.push(
      report("study-dimension-unstated", { facts: { examples: dimensionIds.slice(0, 2).join(" or ") } }),
    );
  }
  if (study.missing.length > 0) {
    const what = dimension === undefined ? "the dimension" : `the ${dimensionName(dimension)}`;
    const facts = { count: study.missing.length, cells: grid, what };
    issues.push(report("study-cells-missing", { received: study.missing.length, facts }));
  }
  return success(study, issues);
}

function requireOptions({ dimension, unit, layout, people }: StudyOptions): void {
  if (dimension !== undefined && !dimensionIds.includes(dimension)) {
    throw new InvalidArgumentError("dimension", dimension, "one of the dimension ids");
  }
  if (unit !== undefined && !lengthUnits.includes(unit)) {
    throw new InvalidArgumentError("unit", unit, `one of ${lengthUnits.join(", ")}`);
  }
  if (layout !== undefined && layout !== "long" && layout !== "wide" && layout !== "json") {
    throw new InvalidArgumentError("layout", layout, '"long", "wide" or "json"');
  }
  if (people !== undefined && people !== "adult" && people !== "child") {
    throw new InvalidArgumentError("people", people, '"adult" or "child"');
  }
}
