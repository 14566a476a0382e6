import type { SizeChart } from "@tapewise/charts";
import { type Member, pickFor } from "./crew.ts";
import { rangeOf } from "./makers.ts";

/** Wrong sizes among people whom some size fits. */
export interface Wrong {
  readonly people: number;
  readonly wrong: number;
}

/** Counts who is given a size that truly does not fit, among those whom some size fits. */
export function wrongAmong(members: readonly Member[], chart: SizeChart, truth: SizeChart): Wrong {
  let [people, wrong] = [0, 0];
  for (const member of members) {
    const fits = (size: string): boolean => {
      const { from, to } = rangeOf(truth, size);
      return member.trueMm >= from && member.trueMm <= to;
    };
    if (!truth.sizes.some(({ name }) => fits(name))) continue;
    people += 1;
    if (!fits(pickFor(member, chart))) wrong += 1;
  }
  return { people, wrong };
}
