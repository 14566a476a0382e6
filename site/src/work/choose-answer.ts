import { type charts, fit, type outcome } from "tapewise";
import { type PersonLine, safeReadPerson } from "tapewise/batch";
import type { ShownUnit } from "../parts/lengths.ts";
import { type ChooseState, type ReadDimension, readDimensions } from "./choose-state.ts";

/** What the worker is asked: the fields, and the charts that were ticked or pasted. */
export interface ChooseQuestion {
  readonly state: ChooseState;
  readonly charts: readonly charts.SizeChart[];
}

/** An issue and the field that it belongs to, if there is one. */
export interface FieldIssue {
  readonly field: string | undefined;
  readonly issue: outcome.Issue;
}

/** What the page shows. Everything in it survives being sent between threads. */
export interface ChooseAnswer {
  readonly issues: readonly FieldIssue[];
  readonly person: fit.Person | undefined;
  readonly packs: readonly fit.RankedChart[];
  readonly unit: ShownUnit;
  readonly charts: readonly charts.SizeChart[];
  /** The entries that it answers, so that what is shown of both belongs together. */
  readonly state: ChooseState;
}

/** What the entries say of a person, with what is wrong with them; nobody while anything in them is wrong. */
export interface EntriesRead {
  readonly person: fit.Person | undefined;
  readonly issues: readonly FieldIssue[];
}

/** Reads the entries, for charts that may size by stature. */
export function readEntries(state: ChooseState, packs: readonly charts.SizeChart[]): EntriesRead {
  const { line, fields } = lineOf(state);
  const sizesByStature = packs.some(({ sizes }) => sizes.some(({ ranges }) => ranges.stature !== undefined));
  const read = safeReadPerson(line, {
    prior: state.isPriorLeftOut ? "none" : "automatic",
    estimateStature: sizesByStature,
  });
  const issues = read.issues.map((issue) => ({ field: fieldOf(issue.path, fields), issue }));
  const isWrong = issues.some(({ issue }) => issue.severity === "error");
  return { person: read.ok && !isWrong ? read.value : undefined, issues };
}

/**
 * Holds the entries against the charts. As in the batch contract, anything that cannot be read keeps a
 * size from being named, so that no doubtful choice passes for a sound one.
 */
export function answerChoose({ state, charts: packs }: ChooseQuestion): ChooseAnswer {
  const { person, issues } = readEntries(state, packs);
  const answer = { person, issues, packs: [], unit: state.unit, charts: packs, state };
  if (person === undefined || packs.length === 0) return answer;
  const comparison = fit.compare(person, packs, { unit: state.unit });
  const about = comparison.issues.map((issue) => ({ field: undefined, issue }));
  return {
    ...answer,
    issues: [...issues, ...about],
    packs: comparison.ok ? comparison.value.ranked : [],
  };
}

/** The id of the field of one reading. */
export function readingField(dimension: ReadDimension, index: number): string {
  return `reading-${dimension}-${index}`;
}

interface LineOfState {
  readonly line: PersonLine;
  /** For each dimension, the field behind each reading that is not blank. */
  readonly fields: Readonly<Partial<Record<ReadDimension, readonly number[]>>>;
}

function lineOf(state: ChooseState): LineOfState {
  const readings: Partial<Record<ReadDimension, readonly string[]>> = {};
  const fields: Partial<Record<ReadDimension, readonly number[]>> = {};
  for (const dimension of readDimensions) {
    const entered = state.readings[dimension]
      .map((text, index) => ({ text, index }))
      .filter(({ text }) => text.trim() !== "");
    if (entered.length === 0) continue;
    readings[dimension] = entered.map(({ text }) => text);
    fields[dimension] = entered.map(({ index }) => index);
  }
  const line: PersonLine = {
    readings,
    ...(state.measuredBy === "" ? {} : { measuredBy: state.measuredBy }),
    ...(state.tool === "" ? {} : { tool: state.tool }),
    ...(state.tool === "short-rule" && state.ruleLength.trim() !== ""
      ? { ruleLength: state.ruleLength }
      : {}),
    ...(state.afresh === "" ? {} : { landmarksFoundAfresh: state.afresh === "yes" }),
    ...(state.cut === "" ? {} : { cut: state.cut }),
    ...(state.stature.trim() === "" ? {} : { stature: state.stature }),
    ...(state.build.length === 0 ? {} : { build: state.build }),
    ...(state.isFirstPack ? { firstPack: true } : {}),
  };
  return { line, fields };
}

function fieldOf(path: outcome.IssuePath, fields: LineOfState["fields"]): string | undefined {
  const [first, dimension, position] = path;
  if (first === "stature" || first === "ruleLength" || first === "cut") return first;
  const known = readDimensions.find((id) => id === dimension);
  if (first !== "readings" || known === undefined) return undefined;
  const index = typeof position === "number" ? fields[known]?.[position] : undefined;
  return index === undefined ? `readings-${known}` : readingField(known, index);
}
