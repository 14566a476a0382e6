import type { ChartDimension } from "@tapewise/charts";
import { InvalidArgumentError } from "@tapewise/outcome";
import { canBeSum } from "./can-be-sum.ts";
import { checkKey } from "./check-key.ts";
import { checkModel } from "./check-model.ts";
import { checkSeen } from "./check-seen.ts";
import { evidenceDefaults } from "./data.ts";
import type { EvidenceModel } from "./evidence-model.ts";
import { addLogLikelihood } from "./log-likelihood.ts";
import { NODES } from "./node-table.ts";
import { scaleFor } from "./scale-for.ts";
import type { ProductKey, SeenOutcome } from "./seen-outcome.ts";

/** What the outcomes of one product say of one dimension. */
export interface ProductTable {
  readonly key: ProductKey;
  readonly dimension: ChartDimension;
  /** How many outcomes are in it. */
  readonly count: number;
  /** Logarithms of the likelihood at the nodes, in whole units. */
  readonly units: Float64Array;
}

/** Everything learned from outcomes so far. */
export interface Evidence {
  readonly model: EvidenceModel;
  /**
   * Takes one outcome in.
   *
   * @throws {@link InvalidArgumentError} when its figures are no lengths, its range is not in order, or the side is none.
   */
  add(seen: SeenOutcome): void;
  /**
   * Takes one outcome out again. What is left is, bit for bit, what it would be had it never come.
   *
   * No outcome is kept, only their sum: one that never came is refused where what would be left is the sum of no
   * outcomes, always so when it would be the last one. Between similar outcomes the caller has to know which one came.
   *
   * @throws {@link InvalidArgumentError} as `add` does, and for an outcome that cannot have been added; nothing is changed.
   */
  remove(seen: SeenOutcome): void;
  /**
   * The tables of one maker's products in one dimension, by the name of the product.
   *
   * @throws {@link InvalidArgumentError} for a key without a product, such as the `product` of a row of the log, which says `chart`.
   */
  tablesOf(maker: ProductKey, dimension: ChartDimension): readonly ProductTable[];
}

/**
 * Starts to learn from outcomes: sums of log-likelihoods, product by product, over a table of offsets and widths.
 * The order of the outcomes plays no part, and none is kept. With the same outcomes left, the sums are the same
 * to the last bit. Twenty million outcomes of one product are the most that a sum holds exactly.
 *
 * @throws {@link InvalidArgumentError} for a model whose figures are out of bounds.
 *
 * @example
 * ```ts
 * import { createEvidence, learnProduct } from "@tapewise/afterwards";
 * const evidence = createEvidence();
 * const seen = { maker: "Gingham", product: "Accordion 55", dimension: "torso-length" as const, fromMm: 430, toMm: 480 };
 * for (let i = 0; i < 20; i += 1) evidence.add({ ...seen, side: "above", meanMm: 465, sdMm: 8 });
 * const { offsetMm } = learnProduct(evidence, { maker: "Gingham", product: "Accordion 55" }, "torso-length");
 * offsetMm.mean < -5; // => true
 * ```
 */
export function createEvidence(model: EvidenceModel = evidenceDefaults): Evidence {
  checkModel(model);
  const makers = new Map<
    string,
    Map<string, { key: ProductKey; dimension: ChartDimension; count: number; units: Float64Array }>
  >();
  const change = (seen: SeenOutcome, sign: 1 | -1): void => {
    checkSeen(seen);
    const maker = makerKey(seen, seen.dimension);
    const products = makers.get(maker) ?? new Map();
    const known = products.get(seen.product);
    if (known === undefined && sign === -1) {
      throw new InvalidArgumentError("seen", seen.product, "an outcome that was added before");
    }
    const { maker: name, product, dimension } = seen;
    const table = known ?? {
      key: name === undefined ? { product } : { maker: name, product },
      dimension,
      count: 0,
      units: new Float64Array(NODES),
    };
    const scale = scaleFor(model, dimension);
    addLogLikelihood(table.units, seen, scale, model.slipProbability, sign);
    table.count += sign;
    if (sign === -1 && !canBeSum(table.units, table.count, model.slipProbability)) {
      // Whole numbers: putting it back leaves no trace.
      addLogLikelihood(table.units, seen, scale, model.slipProbability, 1);
      table.count += 1;
      throw new InvalidArgumentError("seen", seen, "an outcome that was added before");
    }
    if (table.count === 0) products.delete(product);
    else products.set(product, table);
    if (products.size === 0) makers.delete(maker);
    else makers.set(maker, products);
  };
  return {
    model,
    add: (seen) => change(seen, 1),
    remove: (seen) => change(seen, -1),
    tablesOf: (maker, dimension) => {
      checkKey(maker, "key");
      return [...(makers.get(makerKey(maker, dimension))?.values() ?? [])]
        .sort((a, b) => (a.key.product < b.key.product ? -1 : 1))
        .map((table) => ({ ...table, units: table.units.slice() }));
    },
  };
}

/** A product whose chart names no maker stands alone. */
function makerKey({ maker, product }: ProductKey, dimension: ChartDimension): string {
  return JSON.stringify([dimension, maker === undefined ? [product] : maker]);
}
