import type { Interval } from "@tapewise/intervals";
import { createIssue, failure, type Outcome, success } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import { cellsOf } from "./cells.ts";
import type { Charts } from "./coverage.ts";
import { coverageIssues } from "./issues.ts";
import type { Plan } from "./plan.ts";
import { planCharts } from "./plan-charts.ts";

/** People whom the same sizes fit and who would be given the same one of them. */
export interface MemberType {
  /** The sizes that fit, by their place in the plan, in order. */
  readonly sizes: readonly number[];
  /** The one that the rule of choice picks. */
  readonly best: number;
  readonly share: number;
}

/** Sizes, and the kinds of people among whom they are given out. */
export interface MemberTypes {
  readonly plan: Plan;
  readonly types: readonly MemberType[];
}

/** Rooms that differ by less are alike: rounding. */
const ALIKE_MM = 1e-6;

/**
 * Takes people apart by the sizes that fit them and the size that the rule of choice gives them: of several that
 * fit, the one with the most room to its nearer end in the dimension that the chart goes by, then the first by name.
 * That is what a choice comes to for somebody who was measured without error. Where two sizes are equally roomy
 * lies halfway between ends, so the split is exact.
 */
export function memberTypes(charts: Charts, population: JointModel): Outcome<MemberTypes> {
  const planned = planCharts(charts, population);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const [first] = plan.sizes;
  const other = plan.sizes.find((size) => size.mainDimension !== first?.mainDimension);
  if (first !== undefined && other !== undefined) {
    const facts = {
      chart: first.chart,
      dimension: first.mainDimension,
      other: other.chart,
      otherDimension: other.mainDimension,
    };
    return failure([
      createIssue(coverageIssues, "coverage-charts-differ", { path: ["charts"], facts }),
      ...planned.issues,
    ]);
  }
  const shares = new Map<string, MemberType>();
  const boxes = plan.offers.map(({ box }) => box);
  for (const { box, inside } of cellsOf(boxes, plan.judged)) {
    const fitting = new Set(inside.map((offer) => plan.offers[offer]?.size ?? 0));
    const sizes = [...fitting].sort((a, b) => a - b);
    for (const within of splitByRoom(
      first === undefined ? undefined : box[first.mainDimension],
      sizes,
      plan,
    )) {
      const part = first === undefined ? box : { ...box, [first.mainDimension]: within };
      const best = roomiest(sizes, representative(within), plan);
      const key = `${sizes.join()} ${best}`;
      const share = (shares.get(key)?.share ?? 0) + population.boxProbability(part).probability;
      shares.set(key, { sizes, best, share });
    }
  }
  const types = [...shares.values()].filter(({ share }) => share > 0);
  return success({ plan, types }, planned.issues);
}

/** Parts of a stretch of the main dimension in each of which the order of rooms stays the same. */
function splitByRoom(
  stretch: Interval | undefined,
  sizes: readonly number[],
  plan: Plan,
): readonly Interval[] {
  if (stretch === undefined) return [];
  if (sizes.length < 2) return [stretch];
  const ranges = sizes.flatMap((size) => plan.sizes[size]?.main ?? []);
  const halfways = ranges
    .flatMap(({ from }) => ranges.map(({ to }) => (from + to) / 2))
    .filter((at) => at > stretch.from && at < stretch.to)
    .sort((a, b) => a - b);
  const parts: Interval[] = [];
  let rest = stretch;
  for (const at of new Set(halfways)) {
    parts.push({ ...rest, to: at, toClosed: true });
    rest = { ...rest, from: at, fromClosed: false };
  }
  return [...parts, rest];
}

/** A length within a stretch and away from its ends. */
function representative({ from, to }: Interval): number {
  if (from === Number.NEGATIVE_INFINITY) return to === Number.POSITIVE_INFINITY ? 0 : to - 1;
  return to === Number.POSITIVE_INFINITY ? from + 1 : (from + to) / 2;
}

function roomiest(sizes: readonly number[], lengthMm: number, plan: Plan): number {
  const [first = 0] = sizes;
  return sizes.reduce((best, size) => (isBetter(size, best, lengthMm, plan) ? size : best), first);
}

function isBetter(size: number, best: number, lengthMm: number, plan: Plan): boolean {
  const [one, other] = [plan.sizes[size], plan.sizes[best]];
  if (one === undefined || other === undefined) return false;
  const room = ({ main }: typeof one): number => Math.min(lengthMm - main.from, main.to - lengthMm);
  const [here, there] = [room(one), room(other)];
  if (here === there || Math.abs(here - there) <= ALIKE_MM) return nameOf(one) < nameOf(other);
  return here > there;
}

function nameOf({ size, chart }: { readonly size: string; readonly chart: string }): string {
  return `${size}\n${chart}`;
}
