import { writeName, writeText } from "../sql/write-sql.ts";
import type { PersonColumn } from "./person-column.ts";

/**
 * An expression that writes a row as a line of the batch contract. What is empty is left out; a cell is passed on as it
 * stands, with the unit of its header behind it where it has one, so that whatever is wrong with it is found where
 * lines are read.
 */
export function personJsonSql(columns: readonly PersonColumn[]): string {
  const readings = columns.filter(({ kind }) => kind === "reading");
  const dimensions = [...new Set(readings.map(({ field }) => field))];
  const fields = columns.flatMap((column) => {
    const value = fieldJson(column);
    return value === undefined ? [] : [member(column.field, value)];
  });
  const errors = columns.filter(({ kind }) => kind === "error");
  const anyError = errors.map(({ column }) => `${textOf(writeName(column))} IS NOT NULL`).join(" OR ");
  return object([
    ...fields,
    ...(errors.length === 0
      ? []
      : [
          `CASE WHEN ${anyError} THEN ${member("error", object(errors.map((one) => member(one.field, numberJson(one)))))} END`,
        ]),
    member(
      "readings",
      object(
        dimensions.map((dimension) =>
          listMember(
            dimension,
            readings.filter(({ field }) => field === dimension),
          ),
        ),
      ),
    ),
  ]);
}

function fieldJson(one: PersonColumn): string | undefined {
  const name = writeName(one.column);
  switch (one.kind) {
    case "text":
      return json(textOf(name));
    case "length":
      return json(withUnit(textOf(name), one));
    case "switch":
      return `CASE WHEN LOWER(${textOf(name)}) IN ('true', 'false') THEN LOWER(${textOf(name)}) ELSE ${json(textOf(name))} END`;
    case "list":
      return isList(one)
        ? json(name)
        : json(`list_transform(string_split(${textOf(name)}, ';'), lambda word: trim(word))`);
    default:
      return undefined;
  }
}

/** The readings of one dimension, in their order. */
function listMember(field: string, columns: readonly PersonColumn[]): string {
  const lists = columns.map((one) => {
    const name = writeName(one.column);
    if (!isList(one)) return `[${withUnit(textOf(name), one)}]`;
    return `list_transform(${name}, lambda cell: ${withUnit(textOf("cell"), one)})`;
  });
  const all = lists.reduce((list, other) => `list_concat(${list}, ${other})`);
  const given = `list_filter(${all}, lambda reading: reading IS NOT NULL)`;
  return `CASE WHEN len(${given}) > 0 THEN ${member(field, json(given))} END`;
}

function isList({ type }: PersonColumn): boolean {
  return type.endsWith("]");
}

/** A cell as text; `NULL` where nothing stands in it. */
function textOf(name: string): string {
  return `NULLIF(TRIM(CAST(${name} AS VARCHAR)), '')`;
}

function withUnit(text: string, { unit }: PersonColumn): string {
  return unit === undefined ? text : `${text} || ' ${unit}'`;
}

/** A number where it is one; any other text as it stands, to be refused. */
function numberJson({ column }: PersonColumn): string {
  const text = textOf(writeName(column));
  const isNumber = `regexp_full_match(${text}, '-?(0|[1-9][0-9]*)([.][0-9]+)?')`;
  return `CASE WHEN ${isNumber} THEN ${text} ELSE ${json(text)} END`;
}

function json(value: string): string {
  return `CAST(to_json(${value}) AS VARCHAR)`;
}

/** A member of an object; `NULL` where its value is, so that it is left out. */
function member(name: string, value: string): string {
  return `${writeText(`"${name}":`)} || NULLIF(${value}, 'null')`;
}

function object(members: readonly string[]): string {
  return `'{' || concat_ws(',', ${[...members, "NULL"].join(", ")}) || '}'`;
}
