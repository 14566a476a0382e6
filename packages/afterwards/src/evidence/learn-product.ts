import type { ChartDimension } from "@tapewise/charts";
import type { Evidence } from "./create-evidence.ts";
import type { LearnedChart } from "./learned.ts";
import { chanceAsPrinted, productPosterior } from "./posterior.ts";
import { scaleFor } from "./scale-for.ts";
import type { ProductKey } from "./seen-outcome.ts";
import { summariseLocated } from "./summarise-located.ts";

/**
 * How the ranges of a product sit against what its chart prints, from its own outcomes and from those of the
 * maker's other products.
 *
 * The offset of a product is N(that of its maker, τp²), that of a maker N(0, τm²), and so for the logarithm of
 * the width factor: a few exchanges pull an estimate a little way from 0, and many all the way (partial pooling;
 * A. Gelman & others, Bayesian Data Analysis, 3rd edition, 2013, chapter 5). Integrals are sums over points that
 * are placed where the probability is; nothing is drawn at random.
 *
 * @throws {@link InvalidArgumentError} for a key without a product, such as the `product` of a row of the log, which says `chart`.
 *
 * @example
 * ```ts
 * import { createEvidence, learnProduct } from "@tapewise/afterwards";
 * const learned = learnProduct(createEvidence(), { maker: "Gingham", product: "Doily 45" }, "torso-length");
 * [learned.outcomes, Math.abs(learned.offsetMm.mean) < 1e-9, learned.offsetMm.sd.toFixed(0)]; // => [0, true, "18"]
 * ```
 */
export function learnProduct(evidence: Evidence, key: ProductKey, dimension: ChartDimension): LearnedChart {
  const tables = evidence.tablesOf(key, dimension);
  const own = tables.find((table) => table.key.product === key.product);
  const others = tables.filter((table) => table !== own);
  const scale = scaleFor(evidence.model, dimension);
  const asPrinted = chanceAsPrinted(tables, scale, evidence.model.asPrintedProbability);
  return summariseLocated(productPosterior(own, others, scale), own?.count ?? 0, asPrinted);
}
