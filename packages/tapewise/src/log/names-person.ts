import { safeOutcomeRow } from "@tapewise/afterwards";
import { escaped } from "@tapewise/outcome";

/**
 * Whether a line is a row of a person, or cannot be read as a row and names the person: as its `person`, or between
 * quotes anywhere, or in quotes that break off with the line.
 */
export function namesPerson(line: string, person: string): "row" | "unreadable" | undefined {
  // No row has an empty name, and yet two quotes stand in many a line.
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
  return mentions(line, person) || (isFields(value) && value.person === person) ? "unreadable" : undefined;
}

function mentions(line: string, person: string): boolean {
  const quoted = JSON.stringify(person);
  return [quoted, escaped(quoted)].some((text) => line.includes(text) || line.endsWith(text.slice(0, -1)));
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
