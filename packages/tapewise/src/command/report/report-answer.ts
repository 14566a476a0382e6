import type { SizeChart } from "@tapewise/charts";
import { nextStepTexts, type Recommendation } from "@tapewise/fit";
import type { Answer } from "../answer.ts";
import { wrap } from "../text/wrap.ts";
import { card } from "./card.ts";
import { LEGEND } from "./pictures.ts";
import { ranking } from "./ranking.ts";
import { reportReadings } from "./readings.ts";

/** How much of an answer is told. */
export interface ReportOptions {
  /** Whether to show where the uncertainty comes from. */
  readonly budget?: boolean;
  /** Only the best so many packs get a card; left out, all do. */
  readonly mostCards?: number;
}

/** The whole answer to one person, as lines. */
export function reportAnswer(
  answer: Answer,
  charts: readonly SizeChart[],
  { budget = false, mostCards = Number.POSITIVE_INFINITY }: ReportOptions = {},
): string[] {
  const { person, comparison, issues, unit } = answer;
  const ranked = comparison?.ranked ?? [];
  const cards = ranked.slice(0, mostCards).flatMap(({ rank, recommendation }) => {
    const chart = chartOf(recommendation, charts);
    return chart === undefined ? [] : card(recommendation, chart, unit, ranked.length > 1 ? rank : undefined);
  });
  return [
    ...reportReadings(person, issues, { unit, budget }),
    ...(comparison === undefined || ranked.length < 2 ? [] : ranking(comparison)),
    ...cards,
    ...(cards.length === 0 ? [] : closing()),
  ];
}

/** What goes for every pack. */
function closing(): string[] {
  return [
    ...wrap(LEGEND),
    "",
    ...wrap(nextStepTexts["check-on-body"]),
    ...wrap(`Caution. ${nextStepTexts["see-fitter"]}`),
  ];
}

/** The chart that a recommendation was made from. Two charts may bear one name, but they do not share a range. */
function chartOf(recommendation: Recommendation, charts: readonly SizeChart[]): SizeChart | undefined {
  const range = recommendation.sizes[0]?.dimensions[0]?.range;
  return charts.find((chart) =>
    chart.sizes.some((size) => Object.values(size.ranges).some((one) => one === range)),
  );
}
