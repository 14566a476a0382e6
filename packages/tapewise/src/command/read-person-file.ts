import { createIssue, failure, hasIssues, type Outcome, success } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { parsePersonJson } from "../person/parse-person-json.ts";
import { readTextFile, readTextInput } from "./files.ts";
import type { Io } from "./io.ts";

/** The JSON value of a person's file; `-` is the standard input. Adds the codes `file-not-json` and `person-field-repeated`. */
export async function readPersonFile(path: string, io: Io): Promise<Outcome<unknown>> {
  const text = path === "-" ? await readTextInput(io) : await readTextFile(path);
  if (!text.ok) return text;
  const parsed = parsePersonJson(text.value);
  if (parsed === undefined)
    return failure([createIssue(tapewiseIssues, "file-not-json", { received: path })]);
  return hasIssues(parsed.repeats) ? failure(parsed.repeats) : success(parsed.value);
}
