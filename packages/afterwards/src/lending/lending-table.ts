import type { Recommendation } from "@tapewise/fit";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { afterwardsIssues } from "../issues.ts";
import type { LendingTable } from "./lending.ts";

/** Somebody who wants to borrow a pack, and what was recommended to them. */
export interface LendingMember {
  readonly member: string;
  /** One for each chart that the member was held against. */
  readonly recommendations: readonly Recommendation[];
}

/** How many of one size of one chart there are. */
export interface ShelfSize {
  /** The chart's own name, as recommendations have it. */
  readonly chart: string;
  readonly size: string;
  readonly count: number;
}

/**
 * Makes the table that {@link lendPacks} takes out of recommendations: for each member and each size on the shelf the
 * probability that it fits and the expected misfit. A pack is called by its chart and its size, "Doily 45, M". Hip
 * belts that are sized apart are not looked at.
 *
 * A size that a member was not held against gets a chance of 0, so that it is not lent to them, and the outcome says
 * so: code `lending-size-not-judged`, a warning. Code of failure: `lending-chart-repeated`, where a member comes with
 * two recommendations of one chart's name, for it cannot be told which of them the shelf means.
 *
 * @example
 * ```ts
 * import { lendingTable, lendPacks } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * import { recommend } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { unwrap } from "@tapewise/outcome";
 * import { parseLength } from "@tapewise/units";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const members = [["ana", "42.5 cm"], ["ben", "45 cm"]].map(([member = "", length = ""]) => {
 *   const error = { biasMm: 5, repeatMm: 0, resolutionMm: 0 };
 *   const torso = parseEstimate({ dimension: "torso-length", readings: [parseLength(length)], error });
 *   return { member, recommendations: [unwrap(recommend({ estimates: [torso] }, chart, { unit: "cm" }))] };
 * });
 * const shelf = [{ chart: "Doily 45", size: "S", count: 1 }, { chart: "Doily 45", size: "M", count: 1 }];
 * const lending = lendPacks(unwrap(lendingTable(members, shelf)), { goal: "chance", unservedCost: 1 });
 * lending.lent.map(({ member, pack }) => [member, pack]); // => [["ana", "Doily 45, S"], ["ben", "Doily 45, M"]]
 * ```
 */
export function lendingTable(
  members: readonly LendingMember[],
  shelf: readonly ShelfSize[],
): Outcome<LendingTable> {
  const repeated = members.flatMap(repeatsOf);
  if (hasIssues(repeated)) return failure(repeated);
  const issues: Issue[] = [];
  const fits = members.map(({ member, recommendations }, i) => {
    const bySize = new Map(
      recommendations.flatMap(({ chart, sizes }) =>
        sizes.map((fit) => [keyOf(chart, fit.size), fit] as const),
      ),
    );
    return shelf.map(({ chart, size }) => {
      const fit = bySize.get(keyOf(chart, size));
      if (fit === undefined) {
        const facts = { member, pack: `${chart}, ${size}` };
        const details = { path: ["members", i], received: facts.pack, facts };
        issues.push(createIssue(afterwardsIssues, "lending-size-not-judged", details));
      }
      return { chance: fit?.probability ?? 0, misfitMm: fit?.expectedMisfitMm ?? 0 };
    });
  });
  const table: LendingTable = {
    members: members.map(({ member }) => member),
    shelf: shelf.map(({ chart, size, count }) => ({ pack: `${chart}, ${size}`, count })),
    chances: fits.map((row) => row.map(({ chance }) => Math.min(1, chance))),
    misfitsMm: fits.map((row) => row.map(({ misfitMm }) => Math.min(MOST_MISFIT_MM, misfitMm))),
  };
  return success(table, issues);
}

function repeatsOf({ member, recommendations }: LendingMember, place: number): readonly Issue[] {
  return recommendations.flatMap(({ chart }, index) => {
    const isFirst = recommendations.findIndex((one) => one.chart === chart) === index;
    if (isFirst) return [];
    const path = ["members", place, "recommendations", index];
    return [
      createIssue(afterwardsIssues, "lending-chart-repeated", { path, received: chart, facts: { member } }),
    ];
  });
}

/** Nothing is that far off, and {@link lendPacks} takes no more. */
const MOST_MISFIT_MM = 10_000;

function keyOf(chart: string, size: string): string {
  return JSON.stringify([chart, size]);
}
