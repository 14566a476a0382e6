import { createIssue, type Issue } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { findRepeatedKeys } from "./find-repeated-keys.ts";

/** A value out of JSON, and an issue `person-field-repeated` for each key that would have been passed over in silence. */
export interface ParsedJson {
  readonly value: unknown;
  readonly repeats: readonly Issue[];
}

/** Reads JSON; `undefined` for a text that is none. */
export function parsePersonJson(text: string): ParsedJson | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  const repeats = findRepeatedKeys(text).map((path) =>
    createIssue(tapewiseIssues, "person-field-repeated", {
      path,
      received: "the same field again",
      facts: { field: String(path.at(-1)) },
    }),
  );
  return { value, repeats };
}
