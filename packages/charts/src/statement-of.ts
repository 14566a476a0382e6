import { readCell } from "./read-cell.ts";
import type { Statement } from "./statement.ts";

/** What a stated text says, where it is one statement that can be read by itself. */
export function statementOf(text: string | undefined): Statement | undefined {
  if (text === undefined) return undefined;
  const outcome = readCell(text, []);
  return outcome.ok && outcome.issues.length === 0 && outcome.value.length === 1
    ? outcome.value[0]
    : undefined;
}
