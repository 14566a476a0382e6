import type { ExchangeReason, OutcomeRow } from "@tapewise/afterwards";

/** What became of one size. */
export interface SizeCount {
  readonly size: string;
  readonly kept: number;
  readonly exchanged: number;
  /** How many exchanges were told which reason; exchanges without one are in none of them. */
  readonly reasons: { readonly [R in ExchangeReason]?: number };
}

/** What became of one product, size by size in the order in which they came. */
export interface ProductCount {
  readonly maker?: string;
  readonly chart: string;
  readonly sizes: readonly SizeCount[];
}

/** Counts rows by product and size. */
export function countOutcomes(rows: readonly OutcomeRow[]): readonly ProductCount[] {
  const products = new Map<string, { of: OutcomeRow["product"]; sizes: Map<string, SizeCount> }>();
  for (const { product, size, outcome, reason } of rows) {
    const key = JSON.stringify([product.maker ?? null, product.chart]);
    const entry = products.get(key) ?? { of: product, sizes: new Map<string, SizeCount>() };
    const before = entry.sizes.get(size) ?? { size, kept: 0, exchanged: 0, reasons: {} };
    const isKept = outcome === "kept";
    entry.sizes.set(size, {
      size,
      kept: before.kept + (isKept ? 1 : 0),
      exchanged: before.exchanged + (isKept ? 0 : 1),
      reasons:
        reason === undefined
          ? before.reasons
          : { ...before.reasons, [reason]: (before.reasons[reason] ?? 0) + 1 },
    });
    products.set(key, entry);
  }
  return [...products.values()].map(({ of, sizes }) => ({ ...of, sizes: [...sizes.values()] }));
}
