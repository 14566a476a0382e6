import type { SizeChart } from "@tapewise/charts";
import { type IntervalUnion, union } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import {
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import type { Charts } from "./coverage.ts";
import { dimensionOrder, type Plan } from "./plan.ts";
import { planChart } from "./plan-chart.ts";

/** What charts offer together. Those that cannot be judged are told and left out. */
export function planCharts(charts: Charts, population: JointModel): Outcome<Plan> {
  const list: readonly SizeChart[] = "sizes" in charts ? [charts] : charts;
  if (list.length === 0) throw new InvalidArgumentError("charts", list, "at least one chart");
  const outcomes = list.map((chart) => planChart(chart, population.variables, population.about.label));
  const issues: readonly Issue[] = outcomes.flatMap((outcome) => outcome.issues);
  const plans = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  if (plans.length === 0 && hasIssues(issues)) return failure(issues);
  return success(plans.reduce(join), issues);
}

function join(a: Plan, b: Plan): Plan {
  const shift = a.sizes.length;
  const dimensions = dimensionOrder.filter((name): name is DimensionId =>
    [...a.judged, ...b.judged].some((one) => one === name),
  );
  const coveredBy = (plan: Plan, name: DimensionId): IntervalUnion =>
    union(...plan.spans.filter(({ dimension }) => dimension === name).flatMap(({ covered }) => covered));
  return {
    sizes: [...a.sizes, ...b.sizes],
    offers: [...a.offers, ...b.offers.map(({ size, box }) => ({ size: size + shift, box }))],
    judged: dimensions,
    leftOut: [...new Set([...a.leftOut, ...b.leftOut])],
    spans: dimensions.map((dimension) => ({
      dimension,
      covered: union(...coveredBy(a, dimension), ...coveredBy(b, dimension)),
    })),
  };
}
