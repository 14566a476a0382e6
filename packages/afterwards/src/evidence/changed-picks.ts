import type { SizeChart } from "@tapewise/charts";
import { type Person, recommend } from "@tapewise/fit";
import { InvalidArgumentError } from "@tapewise/outcome";
import { correctChart } from "./correct-chart.ts";
import type { Evidence } from "./create-evidence.ts";

/** How many of some people are given another size than by the printed chart. */
export interface ChangedPicks {
  /** Those for whom both charts give a pick. */
  readonly people: number;
  readonly changed: number;
  /** `changed` over `people`; 0 where there is nobody. */
  readonly share: number;
  /** How many go from one size to another. */
  readonly moves: readonly { readonly from: string; readonly to: string; readonly people: number }[];
}

/**
 * What evidence changes among people, say the members of a crew or a sample of a population: who is given another
 * size than by the printed chart.
 *
 * @throws {@link InvalidArgumentError} as `recommend` does, and when no person could be held against the chart.
 *
 * @example
 * ```ts
 * import { changedPicks, createEvidence } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * import { referencePrior } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,43-48\n", { chart: "Doily 45" });
 * const people = [{ estimates: [], prior: referencePrior({ cut: "women" }) }];
 * changedPicks(people, chart, createEvidence()); // => { people: 1, changed: 0, share: 0, moves: [] }
 * ```
 */
export function changedPicks(people: readonly Person[], chart: SizeChart, evidence: Evidence): ChangedPicks {
  const corrected = correctChart(chart, evidence).chart;
  const moves = new Map<string, { from: string; to: string; people: number }>();
  let [judged, changed] = [0, 0];
  for (const person of people) {
    const before = recommend(person, chart, { unit: "cm" });
    const after = corrected === chart ? before : recommend(person, corrected, { unit: "cm" });
    if (!(before.ok && after.ok)) continue;
    judged += 1;
    const [from, to] = [before.value.pick, after.value.pick];
    if (from === to) continue;
    changed += 1;
    const key = JSON.stringify([from, to]);
    const move = moves.get(key) ?? { from, to, people: 0 };
    move.people += 1;
    moves.set(key, move);
  }
  if (judged === 0 && people.length > 0) {
    throw new InvalidArgumentError("people", people.length, "people who can be held against the chart");
  }
  const order = [...moves.values()].sort(
    (a, b) => b.people - a.people || (a.from + a.to < b.from + b.to ? -1 : 1),
  );
  return { people: judged, changed, share: judged === 0 ? 0 : changed / judged, moves: order };
}
