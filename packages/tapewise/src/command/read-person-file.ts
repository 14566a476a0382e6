import { createIssue, failure, type Outcome, success } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { readTextFile, readTextStream } from "./files.ts";
import type { Io } from "./io.ts";

/** The JSON value of a person's file; `-` is the standard input. Adds the code `file-not-json`. */
export async function readPersonFile(path: string, io: Io): Promise<Outcome<unknown>> {
  const text = path === "-" ? await readTextStream(io.stdin, "the standard input") : await readTextFile(path);
  if (!text.ok) return text;
  try {
    const value: unknown = JSON.parse(text.value);
    return success(value);
  } catch {
    return failure([createIssue(tapewiseIssues, "file-not-json", { received: path })]);
  }
}
