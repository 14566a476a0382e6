import type { Issue } from "@tapewise/outcome";
import { chartIssue } from "./chart-issue.ts";
import type { DraftSize } from "./draft.ts";

/** The first size of each name. Later ones are reported and left out: which of them is right, nobody knows. */
export function keepFirst(sizes: readonly (DraftSize | undefined)[], issues: Issue[]): readonly DraftSize[] {
  const names = new Set<string>();
  return sizes.filter((size) => {
    if (size === undefined) return false;
    const name = size.name.toLowerCase();
    if (names.has(name)) {
      const { path, place } = size;
      issues.push(chartIssue("chart-size-repeated", { path, place, received: size.name }));
      return false;
    }
    names.add(name);
    return true;
  }) as readonly DraftSize[];
}
