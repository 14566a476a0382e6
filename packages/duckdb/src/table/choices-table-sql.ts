import { writeName } from "../sql/write-sql.ts";
import { ANSWER } from "./answer-function.ts";
import type { PersonColumn } from "./person-column.ts";
import { personJsonSql } from "./person-json-sql.ts";

const FITS = '[{"size":"VARCHAR","probability":"DOUBLE","expectedMisfitMm":"DOUBLE"}]';
const CHOICE =
  '{"chart":"VARCHAR","verdict":"VARCHAR","pick":"VARCHAR","probability":"DOUBLE",' +
  `"sizes":${FITS},"belt":{"pick":"VARCHAR","probability":"DOUBLE"},"reasons":["VARCHAR"]}`;

/** The columns of the choices, in their order. */
export const choiceColumns: readonly string[] = [
  "row",
  "id",
  "chart",
  "pick",
  "verdict",
  "probability",
  "expected_misfit_mm",
  "belt_pick",
  "belt_probability",
  "reasons",
  "sizes",
  "issue_codes",
  "issues",
];

/** The query that answers the people of a table: a row for each person and chart, in the order of both. */
export function choicesTableSql(columns: readonly PersonColumn[], reader: string): string {
  const id = columns.find(({ kind }) => kind === "id");
  return `WITH source AS (
  SELECT row_number() OVER () AS "row", ${id === undefined ? "NULL" : writeName(id.column)} AS id,
    ${personJsonSql(columns)} AS line
  FROM ${reader}
), answered AS (
  SELECT "row", id, from_json(${ANSWER}(line), '{"choices":[${CHOICE}],"issues":"JSON"}') AS answer FROM source
), chosen AS (
  SELECT "row", id, unnest(coalesce(answer.choices, [NULL])) AS choice, answer.issues AS issues FROM answered
)
SELECT "row", id, choice.chart AS chart, choice.pick AS pick, choice.verdict AS verdict,
  choice.probability AS probability,
  list_filter(choice.sizes, lambda one: one.size = choice.pick)[1].expectedMisfitMm AS expected_misfit_mm,
  choice.belt.pick AS belt_pick, choice.belt.probability AS belt_probability,
  array_to_string(choice.reasons, ' ') AS reasons,
  CAST(to_json(choice.sizes) AS VARCHAR) AS sizes,
  array_to_string(list_transform(from_json(issues, '[{"code":"VARCHAR"}]'), lambda one: one.code), ' ') AS issue_codes,
  CAST(issues AS VARCHAR) AS issues
FROM chosen`;
}
