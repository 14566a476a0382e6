import type { Person, Recommendation, SizeFit } from "@tapewise/fit";
import type { Issue } from "@tapewise/outcome";
import type { ChoiceLine, ChoiceSummary, SizeSummary } from "./choice-line.ts";
import { summariseIssue } from "./summarise-issue.ts";

/** What a person and their recommendations come to on one line. */
export function summariseChoice(
  id: string | number | null,
  person: Person,
  recommendations: readonly Recommendation[],
  issues: readonly Issue[],
): ChoiceLine {
  return {
    id,
    estimates: Object.fromEntries(
      person.estimates.map(({ dimension, mm, uncertaintyMm }) => [
        dimension,
        { mm: rounded(mm, 6), uncertaintyMm: rounded(uncertaintyMm, 6) },
      ]),
    ),
    choices: recommendations.map(summariseRecommendation),
    ...(issues.length === 0 ? {} : { issues: issues.map(summariseIssue) }),
  };
}

function summariseRecommendation(recommendation: Recommendation): ChoiceSummary {
  const { chart, verdict, pick, probability, sizes, belt, reasons } = recommendation;
  return {
    chart,
    verdict,
    pick,
    probability: rounded(probability, 9),
    sizes: sizes.map(summariseSize),
    ...(belt === undefined
      ? {}
      : {
          belt: {
            pick: belt.pick,
            probability: rounded(belt.probability, 9),
            sizes: belt.sizes.map(summariseSize),
          },
        }),
    reasons: reasons.map((reason) => reason.code),
  };
}

function summariseSize({ size, probability, expectedMisfitMm }: SizeFit): SizeSummary {
  return {
    size,
    probability: rounded(probability, 9),
    expectedMisfitMm: rounded(expectedMisfitMm, 6),
  };
}

/**
 * Nanometres of length and a thousandth of a millionth of probability: far below what matters, and
 * above the last digits in which two ways to the same number differ.
 */
function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}
