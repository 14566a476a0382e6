import {
  type ChartDimension,
  type ParseChartOptions,
  type SizeChart,
  safeParseChart,
} from "@tapewise/charts";
import type { Issue, Outcome } from "@tapewise/outcome";

/** A chart and its issues, for tests that have to look at both. */
export function read(
  text: string,
  options: ParseChartOptions = {},
): { readonly chart: SizeChart; readonly issues: readonly Issue[] } {
  const outcome = safeParseChart(text, { chart: "Crew pack 40", ...options });
  if (!outcome.ok) throw new Error(`no chart: ${outcome.issues.map((issue) => issue.message).join("; ")}`);
  return { chart: outcome.value, issues: outcome.issues };
}

/** The bounds of each size, by name, in one dimension. */
export function bounds(
  chart: SizeChart,
  dimension: ChartDimension = "torso-length",
): Record<string, readonly [from: number, to: number]> {
  return Object.fromEntries(
    chart.sizes.flatMap(({ name, ranges }) => {
      const range = ranges[dimension];
      return range === undefined ? [] : [[name, [range.interval.from, range.interval.to] as const]];
    }),
  );
}

/** The codes of issues, in their order. */
export function codes(issues: readonly Issue[]): readonly string[] {
  return issues.map((issue) => issue.code);
}

/** Each issue's code with its line and column. */
export function places(issues: readonly Issue[]): readonly string[] {
  return issues.map(({ code, place }) => `${code} ${place?.line}:${place?.column}`);
}

/** The issues of an outcome that has no value. */
export function failureOf(outcome: Outcome<unknown>): readonly Issue[] {
  if (outcome.ok) throw new Error("there is a value");
  return outcome.issues;
}
