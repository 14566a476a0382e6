import { type ChartCorrection, correctChart, recommendWithEvidence } from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import type { Person, Recommendation } from "@tapewise/fit";
import type { LoadedChart } from "../load-charts.ts";
import type { LearnedFromLog } from "./learn-from-log.ts";

/** A pick and its chance. */
export type Picked = Pick<Recommendation, "pick" | "probability">;

/** What a log changes in the choice from one chart. */
export interface ChoiceByLog {
  readonly chart: string;
  /** Rows of the log that are of this chart. */
  readonly outcomes: number;
  /** The dimensions in which there was something to learn from. */
  readonly known: readonly ChartCorrection[];
  /** Those whose ranges were moved, for it is sure enough that they are off. */
  readonly moved: readonly ChartCorrection[];
  /** By what the chart prints. */
  readonly printed: Picked;
  /** By the moved ranges. */
  readonly corrected: Picked;
  /** By the moved ranges, with what is left open about them counted in. */
  readonly withDoubt: Picked;
}

/** Charts with their ranges moved to where outcomes have them, wherever that is sure enough. */
export function correctCharts(loaded: readonly LoadedChart[], { evidence }: LearnedFromLog): LoadedChart[] {
  return loaded.map((one) => ({ ...one, chart: correctChart(one.chart, evidence).chart }));
}

/** Sets beside each other what printed charts and moved ones choose for a person; charts that cannot be judged are left out. */
export function chooseByLog(
  person: Person,
  charts: readonly SizeChart[],
  { evidence, rows }: LearnedFromLog,
): readonly ChoiceByLog[] {
  return charts.flatMap((chart, place) => {
    const plain = recommendWithEvidence(person, chart, evidence, { unit: "cm", doubt: "leave-out" });
    const humble = recommendWithEvidence(person, chart, evidence, { unit: "cm", doubt: "include" });
    if (!(plain.ok && humble.ok)) return [];
    const { printed, corrected, correction } = plain.value;
    return [
      {
        chart: chart.chart,
        outcomes: rows[place] ?? 0,
        known: correction.known,
        moved: correction.corrections,
        printed: picked(printed),
        corrected: picked(corrected),
        withDoubt: picked(humble.value.corrected),
      },
    ];
  });
}

function picked({ pick, probability }: Recommendation): Picked {
  return { pick, probability };
}
