import {
  type ChartCorrection,
  correctChart,
  recommendWithEvidence,
  withChartDoubt,
} from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import type { Person, RankedChart, Recommendation, RecommendOptions } from "@tapewise/fit";
import type { LoadedChart } from "../load-charts.ts";
import type { LearnedFromLog } from "./learn-from-log.ts";

/** A pick and its chance. */
export type Picked = Pick<Recommendation, "pick" | "probability">;

/** What a log tells of one chart. */
export interface ChartByLog {
  readonly chart: string;
  /** Rows of the log that are of this chart. */
  readonly outcomes: number;
  /** The dimensions in which there was something to learn from. */
  readonly known: readonly ChartCorrection[];
  /** Those whose ranges were moved, for it is sure enough that they are off. */
  readonly moved: readonly ChartCorrection[];
}

/** What a log changes in the choice from one chart. */
export interface ChoiceByLog extends ChartByLog {
  /** By what the chart prints. */
  readonly printed: Picked;
  /** By the moved ranges. */
  readonly corrected: Picked;
  /** The answer that is given: by the moved ranges, with what is left open about them counted in. */
  readonly withDoubt: Picked;
}

/** Charts with their ranges moved to where outcomes have them, wherever that is sure enough. */
export function correctCharts(loaded: readonly LoadedChart[], { evidence }: LearnedFromLog): LoadedChart[] {
  return loaded.map((one) => ({ ...one, chart: correctChart(one.chart, evidence).chart }));
}

/** The doubt that a log leaves about charts, which go by their printed names there and maybe by others in the answer. */
export function doubtAfterLog(
  charts: readonly SizeChart[],
  printed: readonly SizeChart[],
  { evidence }: LearnedFromLog,
): NonNullable<RecommendOptions["asSeenFrom"]> {
  const asPrinted = new Map(charts.map((chart, place) => [chart, printed[place] ?? chart]));
  const doubt = withChartDoubt(evidence);
  return (person, chart) => doubt(person, asPrinted.get(chart) ?? chart);
}

/** What a log tells of the charts that a shelf is lent by, under the names that they have in the answer. */
export function lendByLog(
  charts: readonly SizeChart[],
  printed: readonly SizeChart[],
  { evidence, rows }: LearnedFromLog,
): readonly ChartByLog[] {
  return printed.map((chart, place) => {
    const { known, corrections } = correctChart(chart, evidence);
    const name = charts[place]?.chart ?? chart.chart;
    return { chart: name, outcomes: rows[place] ?? 0, known, moved: corrections };
  });
}

/**
 * Sets the answers from the charts, which were ranked with all doubt, beside what printed charts and moved ones choose
 * for a person; charts that cannot be judged are left out.
 */
export function chooseByLog(
  person: Person,
  charts: readonly SizeChart[],
  { evidence, rows }: LearnedFromLog,
  ranked: readonly RankedChart[],
): readonly ChoiceByLog[] {
  return charts.flatMap((chart, place) => {
    const plain = recommendWithEvidence(person, chart, evidence, { unit: "cm", doubt: "leave-out" });
    const answered = ranked.find(({ index }) => index === place)?.recommendation;
    if (!plain.ok || answered === undefined) return [];
    const { printed, corrected, correction } = plain.value;
    return [
      {
        chart: answered.chart,
        outcomes: rows[place] ?? 0,
        known: correction.known,
        moved: correction.corrections,
        printed: picked(printed),
        corrected: picked(corrected),
        withDoubt: picked(answered),
      },
    ];
  });
}

function picked({ pick, probability }: Recommendation): Picked {
  return { pick, probability };
}
