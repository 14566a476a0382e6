import { safeOutcomeRow } from "@tapewise/afterwards";
import { escaped } from "@tapewise/outcome";

/**
 * Whether a line is a row of a person, or cannot be read as a row and has the person as the value of its `person`: in
 * JSON as the field, and in what is no JSON, such as a line that breaks off, as the text of that field. What stands in
 * any other field names nobody, since a size may be called like a pseudonym.
 */
export function namesPerson(line: string, person: string): "row" | "unreadable" | undefined {
  // No row has an empty name.
  if (person === "") return undefined;
  // Most lines are of others: a name stands in a line as it is, or with an escape in it.
  if (!line.includes(person) && !line.includes("\\")) return undefined;
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return mentions(line, person) ? "unreadable" : undefined;
  }
  const outcome = safeOutcomeRow(value);
  if (outcome.ok) return outcome.value.person === person ? "row" : undefined;
  return isFields(value) && value.person === person ? "unreadable" : undefined;
}

function mentions(line: string, person: string): boolean {
  const quoted = JSON.stringify(person);
  return [quoted, escaped(quoted)].some((text) => FIELDS.some((field) => line.includes(`${field}${text}`)));
}

/** The field as this library writes it, and as others do. */
const FIELDS: readonly string[] = ['"person":', '"person": '];

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
