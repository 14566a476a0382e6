import { failure, hasIssues, type Issue, type Outcome, success, unwrap } from "@tapewise/outcome";
import { type Columns, readColumns } from "./read-columns.ts";
import { type PersonRead, readPerson } from "./read-person.ts";
import { readSurveyTable } from "./read-survey-table.ts";
import { type ReportSurvey, reportSurvey } from "./report-survey.ts";
import type { Survey, SurveyMapping, SurveyOptions, SurveyPerson } from "./survey.ts";

/**
 * Reads a survey of people from CSV text: a line of column names, then a line for each person. The mapping says
 * which columns are which dimensions and in which unit; a dimension may be the difference of two columns, and
 * may have several columns where it was read several times. There is no default unit.
 *
 * What can be read is kept, and whatever is not is reported with its line and column. The outcome's issues:
 * `survey-column-missing`, `survey-column-repeated` (the variable is left out), `survey-row-ragged`,
 * `survey-weight-unreadable` (the person is left out), `survey-cell-missing`, `survey-cell-unreadable`,
 * `survey-difference-not-positive` (the value is missing), `survey-value-implausible`, `survey-unit-suspect`,
 * `survey-id-repeated` (everything is kept), `survey-quote-open`. It is a failure only with `survey-not-text`,
 * `survey-empty`, `survey-no-people`, or a column missing without which nothing can be used.
 *
 * @throws {@link InvalidArgumentError} when the mapping names an unknown dimension or unit, or lacks what the
 * figures are about.
 *
 * @example
 * ```ts
 * import { safeReadSurvey } from "@tapewise/population";
 * const text = "name,c7,crest,height\nana,1440,1015,168.2\nbo,1502,,176\n";
 * const outcome = safeReadSurvey(text, {
 *   about: { label: "the crew", source: "measured at the spring meeting", caveat: "two people" },
 *   dimensions: {
 *     "torso-length": { column: "c7", minus: "crest", unit: "mm" },
 *     stature: { column: "height", unit: "cm" },
 *   },
 *   id: "name",
 * });
 * outcome.ok && outcome.value.people[0]?.values; // => { "torso-length": 425, stature: 1682 }
 * outcome.issues[0]?.code; // => "survey-cell-missing"
 * outcome.issues[0]?.place; // => { line: 3, column: 9 }
 * ```
 */
export function safeReadSurvey(
  text: unknown,
  mapping: SurveyMapping,
  options: SurveyOptions = {},
): Outcome<Survey> {
  const report = reportSurvey(options.file);
  const start = { line: 1, column: 1 };
  if (typeof text !== "string") return failure([report("survey-not-text", { received: text }, start)]);
  const { rows, openQuote } = readSurveyTable(text, options.separator);
  const issues: Issue[] =
    openQuote === undefined ? [] : [report("survey-quote-open", { received: '"' }, openQuote)];
  const [header, ...lines] = rows;
  if (header === undefined) {
    return failure([report("survey-empty", { received: text.slice(0, 100) }, start), ...issues]);
  }
  const columns = readColumns(header, mapping, report);
  issues.push(...columns.issues);
  if (!columns.usable && hasIssues(issues)) return failure(issues);

  const reads = lines.map((row): PersonRead => {
    if (row.length === header.length) return readPerson(row, columns, options, report);
    const facts = { cells: row.length, columns: header.length };
    return {
      issues: [report("survey-row-ragged", { received: row[0]?.text, facts }, row[0])],
      implausible: [],
    };
  });
  const people = reads.flatMap(({ person }) => (person === undefined ? [] : [person]));
  issues.push(...reads.flatMap((read) => read.issues));
  issues.push(...reportImplausible(reads, people, columns, report));
  issues.push(...reportRepeated(people, report));
  if (!people.some(({ values }) => Object.keys(values).length > 0)) {
    return failure([report("survey-no-people", { received: lines.length }, start), ...issues]);
  }
  return success(
    {
      about: mapping.about,
      variables: columns.variables.map(({ variable }) => variable),
      people,
      weighted: mapping.weight !== undefined,
    },
    issues,
  );
}

/**
 * As {@link safeReadSurvey}, for a survey that is known to be readable.
 *
 * @throws `IssuesError` with the issues of {@link safeReadSurvey}.
 *
 * @example
 * ```ts
 * import { readSurvey } from "@tapewise/population";
 * const survey = readSurvey("waist;hip\n82,5;98\n", {
 *   about: { label: "the crew", source: "measured at home", caveat: "one person" },
 *   dimensions: { "waist-girth": { column: "waist", unit: "cm" } },
 * });
 * survey.people.length; // => 1
 * ```
 */
export function readSurvey(text: string, mapping: SurveyMapping, options: SurveyOptions = {}): Survey {
  return unwrap(safeReadSurvey(text, mapping, options));
}

/** One issue for a column of which most values are implausible, for its unit is likely wrong; else one each. */
function reportImplausible(
  reads: readonly PersonRead[],
  people: readonly SurveyPerson[],
  columns: Columns,
  report: ReportSurvey,
): readonly Issue[] {
  const all = reads.flatMap((read) => read.implausible);
  return columns.variables.flatMap(({ variable, sources }) => {
    const found = all.filter((each) => each.variable === variable).map(({ issue }) => issue);
    const count = people.filter(({ values }) => values[variable] !== undefined).length;
    const [first] = found;
    if (first === undefined || count < 3 || found.length <= count / 2) return found;
    const from = sources[0]?.from;
    const unit = from !== undefined && "unit" in from ? from.unit : "kg";
    const facts = { variable, count: found.length, people: count, unit };
    const place = first.place ?? { line: 1, column: 1 };
    return [report("survey-unit-suspect", { path: [variable], received: first.received, facts }, place)];
  });
}

function reportRepeated(people: readonly SurveyPerson[], report: ReportSurvey): readonly Issue[] {
  const seen = new Map<string, number>();
  return people.flatMap(({ id, line }) => {
    if (id === undefined) return [];
    const before = seen.get(id);
    if (before === undefined) {
      seen.set(id, line);
      return [];
    }
    const facts = { line: before };
    return [report("survey-id-repeated", { path: ["id"], received: id, facts }, { line, column: 1 })];
  });
}
