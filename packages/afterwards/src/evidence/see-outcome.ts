import type { ChartDimension, Size, SizeChart } from "@tapewise/charts";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { CheckedPart } from "../body-check/body-check-item.ts";
import { afterwardsIssues } from "../issues.ts";
import type { ExchangeReason, OutcomeEstimate, OutcomeRow } from "../log/outcome-row.ts";
import { partDimensions } from "../part-dimensions.ts";
import type { ProductKey, SeenOutcome, Side } from "./seen-outcome.ts";

/** What a part is called in messages. */
const NAMES: Readonly<Record<CheckedPart, string>> = { harness: "harness", belt: "hip belt" };

/** What a reason says: which part, and on which side of its range the body is. */
const SAYS: Readonly<Partial<Record<ExchangeReason, { readonly part: CheckedPart; readonly side: Side }>>> = {
  "harness-too-long": { part: "harness", side: "below" },
  "harness-too-short": { part: "harness", side: "above" },
  "hip-belt-too-large": { part: "belt", side: "below" },
  "hip-belt-too-small": { part: "belt", side: "above" },
};

/**
 * What a row of the log says as numbers, held against the printed chart of the product: one outcome a part of the
 * pack (harness length, hip belt) that it says something of. A pack that was kept says something of both; one that
 * went back for its belt says nothing of the harness, and without such a reason it says nothing at all. The size that
 * was taken in its place (`exchangedFor`) is not counted: it hangs on the same body.
 *
 * Student's t counts as normal with its own variance, u²·ν/(ν − 2), at most twice u².
 *
 * Codes of failure: `evidence-chart-differs`, `evidence-size-unknown`. Warning: `evidence-not-usable`, where the
 * chart or the estimates lack what the reason speaks of.
 *
 * @example
 * ```ts
 * import { safeSeeOutcome } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45", maker: "Gingham" });
 * const row = {
 *   v: 1, at: "2026-05-04", product: { maker: "Gingham", chart: "Doily 45" }, size: "M",
 *   outcome: "exchanged", reason: "harness-too-long",
 *   estimates: { "torso-length": { mm: 431, uncertaintyMm: 8 } },
 * } as const;
 * const seen = safeSeeOutcome(row, chart);
 * seen.ok && seen.value.map((one) => [one.side, one.fromMm, one.toMm, one.meanMm]); // => [["below", 420, 480, 431]]
 * ```
 */
export function safeSeeOutcome(row: OutcomeRow, chart: SizeChart): Outcome<readonly SeenOutcome[]> {
  const size = chart.sizes.find(({ name }) => name === row.size);
  const faults = [...faultsOfProduct(row, chart), ...(size === undefined ? [unknownSize(row, chart)] : [])];
  if (hasIssues(faults)) return failure(faults);
  if (size === undefined) return success([]);
  const key: ProductKey = {
    ...(chart.maker === undefined ? {} : { maker: chart.maker }),
    product: chart.chart,
  };
  const parts = {
    harness: charted(partDimensions.harness, size, row),
    belt: charted(partDimensions.belt, size, row),
  };
  if (row.outcome === "kept") {
    const kept = [parts.harness, parts.belt].flatMap((part) => part ?? []);
    return success(kept.map((part): SeenOutcome => ({ ...key, ...part, side: "inside" })));
  }
  const says = row.reason === undefined ? undefined : SAYS[row.reason];
  if (says === undefined) return success([]);
  const part = parts[says.part];
  if (part !== undefined) return success([{ ...key, ...part, side: says.side }]);
  const facts = { chart: chart.chart, size: size.name, part: NAMES[says.part] };
  const details = { path: ["reason"], received: row.reason, facts };
  return success([], [createIssue(afterwardsIssues, "evidence-not-usable", details)]);
}

/** Range and belief for the first dimension of a part that both the chart and the row speak of. */
function charted(
  dimensions: readonly ChartDimension[],
  { ranges }: Size,
  row: OutcomeRow,
): Pick<SeenOutcome, "dimension" | "fromMm" | "toMm" | "meanMm" | "sdMm"> | undefined {
  for (const dimension of dimensions) {
    const interval = ranges[dimension]?.interval;
    const length = estimateFor(dimension, row);
    if (interval === undefined || length === undefined) continue;
    return {
      dimension,
      fromMm: interval.from,
      toMm: interval.to,
      meanMm: length.mm,
      sdMm: length.uncertaintyMm * Math.sqrt(widening(length.degreesOfFreedom)),
    };
  }
  return undefined;
}

/** A chart that says "hip" and not which is held against the girth where its belt sits, else the widest. */
function estimateFor(dimension: ChartDimension, { estimates }: OutcomeRow): OutcomeEstimate | undefined {
  if (dimension !== "unstated-hip-girth") return estimates?.[dimension];
  return estimates?.["hip-belt-girth"] ?? estimates?.["hip-girth"];
}

const MOST_WIDENING = 2;

/** Variance of Student's t. */
function widening(df: number = Number.POSITIVE_INFINITY): number {
  if (df === Number.POSITIVE_INFINITY) return 1;
  return df > 2 ? Math.min(MOST_WIDENING, df / (df - 2)) : MOST_WIDENING;
}

function faultsOfProduct({ product }: OutcomeRow, chart: SizeChart): readonly Issue[] {
  if (product.chart === chart.chart && product.maker === chart.maker) return [];
  const received = named(product.maker, product.chart);
  const facts = { known: named(chart.maker, chart.chart) };
  return [createIssue(afterwardsIssues, "evidence-chart-differs", { path: ["product"], received, facts })];
}

function named(maker: string | undefined, chart: string): string {
  return maker === undefined ? chart : `${chart} (${maker})`;
}

function unknownSize({ size }: OutcomeRow, chart: SizeChart): Issue {
  const facts = { chart: chart.chart, known: chart.sizes.map(({ name }) => name).join(", ") || "no size" };
  return createIssue(afterwardsIssues, "evidence-size-unknown", { path: ["size"], received: size, facts });
}
