import { speakDimension } from "@tapewise/charts";
import { createIssue, type Issue } from "@tapewise/outcome";
import { choiceIssues } from "./choice-issues.ts";
import type { Person } from "./person.ts";

/** An issue, `estimate-repeated`, for every estimate of a dimension that there is one of already. */
export function findRepeats({ estimates }: Person): readonly Issue[] {
  return estimates.flatMap(({ dimension }, index) => {
    const isFirst = estimates.findIndex((one) => one.dimension === dimension) === index;
    if (isFirst) return [];
    const facts = { dimension: speakDimension(dimension) };
    return [
      createIssue(choiceIssues, "estimate-repeated", {
        path: ["estimates", index],
        received: dimension,
        facts,
      }),
    ];
  });
}
