import type { SizeChart } from "@tapewise/charts";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { type Answer, answerPerson } from "../person/answer-person.ts";
import type { PriorChoice } from "../person/choose-prior.ts";
import { parsePersonJson } from "../person/parse-person-json.ts";
import { readTextFile, readTextInput } from "./files.ts";
import type { Io } from "./io.ts";

/** Somebody of a list, held against every chart. */
export interface Member {
  /** The id, or else the line. */
  readonly name: string;
  readonly answer: Answer;
}

/** Everybody who could be read of a list, and what is to be said of all of it. */
export interface Members {
  readonly members: readonly Member[];
  readonly issues: readonly Issue[];
}

/** How a list of members is read. */
export interface ReadMembersOptions {
  readonly prior?: PriorChoice | undefined;
  readonly io: Io;
}

/**
 * Reads people as batch lines from a file; `-` is the standard input. As in a batch, whoever has anything of severity
 * `error` is left out, so that no doubtful choice passes for a sound one.
 *
 * Codes beside those of `readTextFile` and `answerPerson`: `lend-member-not-json`, `lend-member-repeated`.
 */
export async function readMembers(
  path: string,
  charts: readonly SizeChart[],
  { prior, io }: ReadMembersOptions,
): Promise<Outcome<Members>> {
  const text = path === "-" ? await readTextInput(io) : await readTextFile(path);
  if (!text.ok) return text;
  const file = path === "-" ? "the standard input" : path;
  const issues: Issue[] = [];
  const members: Member[] = [];
  const names = new Set<string>();
  for (const [index, line] of text.value.split(/\r?\n/).entries()) {
    if (line.trim() === "") continue;
    const place = { file, line: index + 1, column: 1 };
    const outcome = readMember(line, index + 1, charts, prior);
    const { name } = outcome;
    issues.push(...outcome.issues.map((issue) => ({ ...issue, place })));
    if (outcome.answer === undefined) continue;
    if (names.has(name)) {
      issues.push(createIssue(tapewiseIssues, "lend-member-repeated", { received: name, place }));
      continue;
    }
    names.add(name);
    members.push({ name, answer: outcome.answer });
  }
  if (members.length === 0 && hasIssues(issues)) return failure(issues);
  return success({ members, issues });
}

function readMember(
  line: string,
  number: number,
  charts: readonly SizeChart[],
  prior: PriorChoice | undefined,
): { readonly name: string; readonly answer?: Answer; readonly issues: readonly Issue[] } {
  const unnamed = `line ${number}`;
  const parsed = parsePersonJson(line);
  if (parsed === undefined) {
    const details = { received: line, facts: { line: number } };
    return { name: unnamed, issues: [createIssue(tapewiseIssues, "lend-member-not-json", details)] };
  }
  const outcome = answerPerson(parsed.value, charts, { prior });
  const issues = [...parsed.repeats, ...(outcome.ok ? outcome.value.issues : outcome.issues)];
  const isSound = outcome.ok && !issues.some(({ severity }) => severity === "error");
  if (!isSound) return { name: unnamed, issues };
  return { name: String(outcome.value.line.id ?? unnamed), answer: outcome.value, issues };
}
