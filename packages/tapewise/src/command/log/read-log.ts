import { stat } from "node:fs/promises";
import { type ReadOutcomes, readOutcomes } from "@tapewise/afterwards";
import {
  createIssue,
  failure,
  hasIssues,
  type Issue,
  IssuesError,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";
import { fileOutcomeStore } from "../../log/file-outcome-store.ts";

/**
 * A whole log, with what could not be read of it and where that stands. Unlike the store, which begins a log with its
 * first row, it takes a file that is not there for a slip. Codes: `file-missing`, `file-unreadable`.
 */
export async function readLog(path: string): Promise<Outcome<ReadOutcomes>> {
  try {
    await stat(path);
  } catch {
    return failure([createIssue(tapewiseIssues, "file-missing", { received: path })]);
  }
  try {
    const { issues, ...read } = await readOutcomes(fileOutcomeStore(path));
    return success({ ...read, issues: issues.map((issue) => inFile(issue, path)) });
  } catch (error) {
    if (error instanceof IssuesError && hasIssues(error.issues)) return failure(error.issues);
    throw error;
  }
}

function inFile(issue: Issue, file: string): Issue {
  return issue.place === undefined ? issue : { ...issue, place: { ...issue.place, file } };
}
