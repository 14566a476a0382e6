import type { outcome } from "tapewise";
import { type Entries, type ExampleId, examples, type IssueSpot } from "./examples.ts";
import { writeCall, writeJson } from "./write-code.ts";

/** What was told of the entries, and where. */
export interface ToldOfEntries {
  readonly issue: outcome.Issue;
  readonly spot: IssueSpot;
}

/** Which sentence says the answer in words, and what fills it. */
export interface Reading {
  readonly sentence: string;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** What a page shows of one call. Everything in it survives being sent between threads. */
export interface TryAnswer {
  /** The entries that it answers. */
  readonly entries: Entries;
  /** The call as code. */
  readonly call: string;
  /** What it returned, as JSON. */
  readonly returned: string;
  /** Absent where there is no value. */
  readonly reading?: Reading;
  readonly told: readonly ToldOfEntries[];
}

/** A page of a thousand issues helps nobody: more of them are in what is returned, and not told at the fields. */
const MOST_TOLD = 40;

interface Parts<Args extends readonly unknown[], Value> {
  readonly id: ExampleId;
  /** The function that the page shows: this very one runs. */
  readonly run: (...args: Args) => outcome.Outcome<Value>;
  readonly argsOf: (entries: Entries) => Args;
  readonly readingOf: (value: Value, issues: readonly outcome.Issue[], entries: Entries) => Reading;
}

/** Makes of a function that a page shows one that answers entries. */
export function answerWith<Args extends readonly unknown[], Value>(
  parts: Parts<Args, Value>,
): (entries: Entries) => TryAnswer {
  const { id, run, argsOf, readingOf } = parts;
  const { call, spotOf } = examples[id];
  return (entries) => {
    const args = argsOf(entries);
    const returned = run(...args);
    return {
      entries,
      call: writeCall(call, args),
      returned: writeJson(returned),
      ...(returned.ok ? { reading: readingOf(returned.value, returned.issues, entries) } : {}),
      told: returned.issues.slice(0, MOST_TOLD).map((issue) => ({ issue, spot: spotOf(issue) })),
    };
  };
}
