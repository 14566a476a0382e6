import type { DimensionId } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { studentTQuantile } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import type { BudgetLine, Estimate } from "./estimate.ts";
import { combineUncertainties } from "./welch-satterthwaite.ts";

/**
 * The estimate of a dimension that is the difference of two others, such as a torso length from two
 * heights: the mean of `longer` less that of `shorter`, in mm.
 *
 * Both are taken to be independent: the standard uncertainties combine as the root of the sum of squares
 * (GUM 5.1.2), the degrees of freedom by the Welch–Satterthwaite formula (GUM G.4.1). An error that both
 * share, such as that of the tape's scale, cancels in part, so that the uncertainty is rather too large.
 * The readings of both are listed, those of `longer` first; the conditions are those of `longer`, and
 * what either had to assume counts as assumed.
 *
 * @throws {@link InvalidArgumentError} when `longer` is not the longer one, or when the coverage
 * intervals of the two are of different probabilities.
 *
 * @example
 * ```ts
 * import { estimateDifference, parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const height = (dimension: "cervicale-height" | "iliac-crest-height", text: string, biasMm: number) =>
 *   parseEstimate({ dimension, readings: [parseLength(text)], error: { biasMm, repeatMm: 0, resolutionMm: 0 } });
 * const cervicale = height("cervicale-height", "144 cm", 3);
 * const crest = height("iliac-crest-height", "101.5 cm", 4);
 * const torso = estimateDifference("torso-length", cervicale, crest);
 * [torso.mm, torso.uncertaintyMm]; // => [425, 5]
 * ```
 */
export function estimateDifference(dimension: DimensionId, longer: Estimate, shorter: Estimate): Estimate {
  const mm = longer.mm - shorter.mm;
  if (!(mm > 0)) throw new InvalidArgumentError("longer", longer.mm, `a length above ${shorter.mm} mm`);
  const { probability } = longer.coverage;
  if (shorter.coverage.probability !== probability) {
    throw new InvalidArgumentError("shorter", shorter.coverage.probability, `coverage of ${probability}`);
  }
  const both = [longer, shorter];
  const { uncertainty, degreesOfFreedom } = combineUncertainties(
    both.map((one) => ({ uncertainty: one.uncertaintyMm, degreesOfFreedom: one.degreesOfFreedom })),
  );
  const pooled = combineUncertainties(
    both.map(({ spread }) => ({
      uncertainty: spread.pooledMm,
      degreesOfFreedom: spread.degreesOfFreedom > 0 ? spread.degreesOfFreedom : Number.POSITIVE_INFINITY,
    })),
  );
  const readings = both.flatMap((one) => one.readings);
  // What one reading of the pool brings, so that u² = lasting² + perReading² / n holds for all of them.
  const averaged = both.reduce((sum, one) => sum + one.perReadingMm ** 2 / one.readings.length, 0);
  const factor = Math.abs(studentTQuantile((1 - probability) / 2, degreesOfFreedom));
  const assumed = longer.conditions.assumed.concat(shorter.conditions.assumed);
  return {
    dimension,
    mm: millimetres(mm),
    uncertaintyMm: uncertainty,
    degreesOfFreedom,
    coverage: {
      probability,
      factor,
      lowerMm: mm - factor * uncertainty,
      upperMm: mm + factor * uncertainty,
    },
    readings,
    spread: { pooledMm: pooled.uncertainty, degreesOfFreedom: pooled.degreesOfFreedom },
    lastingMm: Math.hypot(longer.lastingMm, shorter.lastingMm),
    perReadingMm: Math.sqrt(averaged * readings.length),
    budget: joinBudgets(longer.budget, shorter.budget, uncertainty),
    conditions: { ...longer.conditions, assumed: [...new Set(assumed)] },
  };
}

/** The causes of both, each with its part of the whole; a cause that is the same in both is one line. */
function joinBudgets(
  one: readonly BudgetLine[],
  other: readonly BudgetLine[],
  combinedMm: number,
): readonly BudgetLine[] {
  const alike = new Map<string, BudgetLine>();
  for (const line of [...one, ...other]) {
    const { source, type, distribution, averagesOut, basis } = line;
    const key = [source, type, distribution, averagesOut, basis].join();
    const earlier = alike.get(key);
    const { uncertainty: uncertaintyMm, degreesOfFreedom } = combineUncertainties(
      [line, ...(earlier === undefined ? [] : [earlier])].map((each) => ({
        uncertainty: each.uncertaintyMm,
        degreesOfFreedom: each.degreesOfFreedom,
      })),
    );
    alike.set(key, { ...line, uncertaintyMm, degreesOfFreedom, share: (uncertaintyMm / combinedMm) ** 2 });
  }
  return [...alike.values()];
}
