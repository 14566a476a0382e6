import type { SizeChart } from "@tapewise/charts";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { type Answer, type AnswerOptions, answerPerson } from "../person/answer-person.ts";
import { idOf } from "../person/id-of.ts";
import { parsePersonJson } from "../person/parse-person-json.ts";
import { readTextFile, readTextInput } from "./files.ts";
import type { Io } from "./io.ts";

/** Somebody of a list, held against every chart. */
export interface Member {
  /** The id, or else the line. */
  readonly name: string;
  readonly answer: Answer;
}

/** Somebody of a list who was left out. */
export interface LeftOut {
  /** The id, where it can be read and nobody else has it, or else the line. */
  readonly member: string;
  readonly line: number;
  /** The first error, in words and with its code. */
  readonly reason: string;
  readonly code: string;
}

/** Everybody who could be read of a list, and what is to be said of all of it. */
export interface Members {
  readonly members: readonly Member[];
  readonly leftOut: readonly LeftOut[];
  readonly issues: readonly Issue[];
}

/** How a list of members is read. */
export interface ReadMembersOptions extends Pick<AnswerOptions, "prior" | "asSeenFrom"> {
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
  { io, ...how }: ReadMembersOptions,
): Promise<Outcome<Members>> {
  const text = path === "-" ? await readTextInput(io) : await readTextFile(path);
  if (!text.ok) return text;
  const file = path === "-" ? "the standard input" : path;
  const issues: Issue[] = [];
  const members: Member[] = [];
  const faulty: { readonly name: string; readonly line: number; readonly error: Issue }[] = [];
  const names = new Set<string>();
  for (const [index, line] of text.value.split(/\r?\n/).entries()) {
    if (line.trim() === "") continue;
    const place = { file, line: index + 1, column: 1 };
    const { name, answer, ...read } = readMember(line, index + 1, charts, how);
    const isRepeated = answer !== undefined && names.has(name);
    const own = [
      ...read.issues.map((issue) => ({ ...issue, place })),
      ...(isRepeated ? [createIssue(tapewiseIssues, "lend-member-repeated", { received: name, place })] : []),
    ];
    issues.push(...own);
    const error = own.find(({ severity }) => severity === "error");
    if (answer === undefined || isRepeated) {
      if (error !== undefined) faulty.push({ name, line: index + 1, error });
      continue;
    }
    names.add(name);
    members.push({ name, answer });
  }
  if (members.length === 0 && hasIssues(issues)) return failure(issues);
  const leftOut = faulty.map(({ name, line, error: { message, code } }): LeftOut => {
    const isTaken = names.has(name) || faulty.some((one) => one.name === name && one.line !== line);
    return { member: isTaken ? nameOfLine(line) : name, line, reason: message, code };
  });
  return success({ members, leftOut, issues });
}

function readMember(
  line: string,
  number: number,
  charts: readonly SizeChart[],
  how: AnswerOptions,
): { readonly name: string; readonly answer?: Answer; readonly issues: readonly Issue[] } {
  const unnamed = nameOfLine(number);
  const parsed = parsePersonJson(line);
  if (parsed === undefined) {
    const details = { received: line, facts: { line: number } };
    return { name: unnamed, issues: [createIssue(tapewiseIssues, "lend-member-not-json", details)] };
  }
  const outcome = answerPerson(parsed.value, charts, how);
  const issues = [...parsed.repeats, ...(outcome.ok ? outcome.value.issues : outcome.issues)];
  const isSound = outcome.ok && !issues.some(({ severity }) => severity === "error");
  if (!isSound) return { name: String(idOf(parsed.value) ?? unnamed), issues };
  return { name: String(outcome.value.line.id ?? unnamed), answer: outcome.value, issues };
}

/** How somebody is called who has no name of their own. */
export function nameOfLine(line: number): string {
  return `line ${line}`;
}
