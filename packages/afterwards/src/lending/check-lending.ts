import { InvalidArgumentError } from "@tapewise/outcome";
import type { LendingPolicy, LendingTable } from "./lending.ts";

/** The largest misfit and the largest cost of going without, in mm or in chance. */
const LARGEST = 10_000;

/** Refuses tables and policies that make no sense. */
export function checkLending(
  { members, shelf, chances, misfitsMm }: LendingTable,
  { goal, unservedCost, leastChance = 0 }: LendingPolicy,
): void {
  requireNames("members", members);
  requireNames(
    "shelf",
    shelf.map(({ pack }) => pack),
  );
  for (const [k, { count }] of shelf.entries()) {
    const isCount = Number.isSafeInteger(count) && count >= 0;
    if (!isCount) throw new InvalidArgumentError(`shelf[${k}].count`, count, "a whole number from 0 up");
  }
  if (goal !== "chance" && goal !== "misfit") {
    throw new InvalidArgumentError("goal", goal, "“chance” or “misfit”");
  }
  requireWithin("unservedCost", unservedCost, LARGEST);
  requireWithin("leastChance", leastChance, 1);
  requireTable("chances", chances, members.length, shelf.length, 1);
  if (misfitsMm !== undefined) requireTable("misfitsMm", misfitsMm, members.length, shelf.length, LARGEST);
  else if (goal === "misfit") {
    throw new InvalidArgumentError("misfitsMm", undefined, "a table, where the goal is the misfit");
  }
}

function requireNames(argument: string, names: readonly string[]): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (name === "" || seen.has(name))
      throw new InvalidArgumentError(argument, name, "names of which no two are alike");
    seen.add(name);
  }
}

function requireWithin(argument: string, value: number, largest: number): void {
  if (!(value >= 0 && value <= largest)) {
    throw new InvalidArgumentError(argument, value, `a number from 0 to ${largest}`);
  }
}

function requireTable(
  argument: string,
  table: readonly (readonly number[])[],
  height: number,
  width: number,
  largest: number,
): void {
  if (table.length !== height)
    throw new InvalidArgumentError(argument, table, `a row for each of ${height} members`);
  for (const [i, row] of table.entries()) {
    if (row.length !== width)
      throw new InvalidArgumentError(`${argument}[${i}]`, row, `a figure for each of ${width} packs`);
    for (const [j, value] of row.entries()) requireWithin(`${argument}[${i}][${j}]`, value, largest);
  }
}
