import type { ExchangeReason } from "@tapewise/afterwards";
import type { ChartDimension, Size, SizeChart } from "@tapewise/charts";
import { createIssue, type Issue } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";

/** What is said of an exchange. */
export interface Exchange {
  readonly size: string;
  readonly reason?: ExchangeReason;
  readonly exchangedFor?: string;
}

/**
 * Questions an exchange that does not go together with its reason. Codes, as warnings: `log-exchange-same-size`,
 * `log-exchange-against-reason`.
 */
export function questionExchange(chart: SizeChart, { size, reason, exchangedFor }: Exchange): Issue[] {
  if (exchangedFor === undefined || reason === "not-about-fit") return [];
  const about = { path: ["exchangedFor"], received: exchangedFor };
  if (exchangedFor === size) return [createIssue(tapewiseIssues, "log-exchange-same-size", about)];
  const claim = reason === undefined ? undefined : CLAIMS[reason];
  if (claim === undefined) return [];
  const [from, to] = [size, exchangedFor].map((name) => chart.sizes.find((one) => one.name === name));
  const moved = claim.dimensions.map((dimension) => move(from, to, dimension)).filter((way) => way !== 0);
  // Where one range goes up and another down, the chart says nothing against the reason.
  if (moved.length === 0 || moved.includes(claim.way)) return [];
  const [other, wanted] = claim.way > 0 ? ["smaller", "larger"] : ["larger", "smaller"];
  const facts = { reason: String(reason), size, other, wanted };
  return [createIssue(tapewiseIssues, "log-exchange-against-reason", { ...about, facts })];
}

interface Claim {
  readonly dimensions: readonly ChartDimension[];
  /** Whether a size is wanted that is for larger people (1) or for smaller ones (-1). */
  readonly way: 1 | -1;
}

const GIRTHS: readonly ChartDimension[] = [
  "hip-belt-girth",
  "hip-girth",
  "waist-girth",
  "unstated-hip-girth",
];
const TORSO: readonly ChartDimension[] = ["torso-length"];

const CLAIMS: { readonly [R in ExchangeReason]?: Claim } = {
  "harness-too-short": { dimensions: TORSO, way: 1 },
  "harness-too-long": { dimensions: TORSO, way: -1 },
  "hip-belt-too-small": { dimensions: GIRTHS, way: 1 },
  "hip-belt-too-large": { dimensions: GIRTHS, way: -1 },
};

/** 1 where a range lies higher in the other size, -1 where it lies lower, 0 where that cannot be told. */
function move(from: Size | undefined, to: Size | undefined, dimension: ChartDimension): number {
  const [one, other] = [from?.ranges[dimension]?.interval, to?.ranges[dimension]?.interval];
  if (one === undefined || other === undefined) return 0;
  const [low, high] = [Math.sign(compare(other.from, one.from)), Math.sign(compare(other.to, one.to))];
  return low * high < 0 ? 0 : Math.sign(low + high);
}

/** The difference of two ends, which may both be endless. */
function compare(one: number, other: number): number {
  return one === other ? 0 : one - other;
}
