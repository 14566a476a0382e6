import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { Person } from "@tapewise/fit";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Evidence } from "./create-evidence.ts";
import { expectedMove } from "./expected-move.ts";
import { learnProduct } from "./learn-product.ts";
import { widenByDoubt } from "./widen-by-doubt.ts";

/**
 * People as seen from charts whose offsets are uncertain, for the option `asSeenFrom` of `recommend` and `compare`.
 * What is believed of each dimension that a chart states gets the doubt about its offset added, so that of two packs the
 * one whose chart is better known promises more. A chart of which no outcome tells has the doubt of a maker that nothing is
 * known of (`evidenceDefaults`). The ranges stay where the chart has them: move them with {@link correctChart}.
 *
 * @example
 * ```ts
 * import { createEvidence, withChartDoubt } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * import { recommend } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,43-48\n", { chart: "Doily 45", maker: "Gingham" });
 * const estimates = [parseEstimate({ dimension: "torso-length", readings: [parseLength("455 mm")] })];
 * const plain = recommend({ estimates }, chart, { unit: "cm" });
 * const humble = recommend({ estimates }, chart, { unit: "cm", asSeenFrom: withChartDoubt(createEvidence()) });
 * plain.ok && humble.ok && humble.value.probability < plain.value.probability; // => true
 * ```
 */
export function withChartDoubt(evidence: Evidence): (person: Person, chart: SizeChart) => Person {
  return (person, chart) => {
    const key = {
      ...(chart.maker === undefined ? {} : { maker: chart.maker }),
      product: chart.chart,
    };
    const stated = new Set(
      [...chart.sizes, ...chart.belts].flatMap(({ ranges }) => Object.keys(ranges) as ChartDimension[]),
    );
    return [...stated].reduce((seen, dimension) => {
      const doubtMm = expectedMove(learnProduct(evidence, key, dimension)).offsetSdMm;
      return readAs(dimension, seen).reduce((one, read) => widenByDoubt(one, read, doubtMm), seen);
    }, person);
  };
}

/** A chart that says "hip" and not which is judged by the one that was read, where its belt sits before the widest. */
function readAs(charted: ChartDimension, { estimates, prior }: Person): readonly DimensionId[] {
  if (charted !== "unstated-hip-girth") return dimensionIds.filter((id) => id === charted);
  const hips: readonly DimensionId[] = ["hip-belt-girth", "hip-girth"];
  const read = hips.find((hip) => estimates.some(({ dimension }) => dimension === hip));
  const known = read ?? hips.find((hip) => prior?.dimensions.includes(hip));
  return known === undefined ? [] : [known];
}
