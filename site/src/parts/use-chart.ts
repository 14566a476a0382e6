import { useEffect, useMemo } from "preact/hooks";
import type { ChartAnswer, ChartQuestion } from "../work/chart-answer.ts";
import { useWorker } from "./use-worker.ts";

/** What an empty text comes to. */
const noChart: ChartAnswer = {
  text: "",
  chart: undefined,
  sizes: 0,
  told: [],
  wrong: 0,
  odd: 0,
  json: undefined,
};

function createChartWorker(): Worker {
  return new Worker(new URL("../workers/chart.ts", import.meta.url), { type: "module" });
}

/** A chart that is read in a worker while its text is being written. */
export interface ReadChart extends ChartAnswer {
  readonly isBusy: boolean;
  readonly failure: string | undefined;
}

/** How a chart is read. */
interface UseChartOptions {
  /** The answer to the text that the page begins with. */
  readonly first?: ChartAnswer;
  /** Whether the chart is looked over and given back as JSON too. */
  readonly isLookedOver?: boolean;
  /** A worker that answers questions about charts; the page's own, where that holds much of the library. */
  readonly create?: () => Worker;
}

/** Reads the text of a chart whenever it changes; nothing is started while there is none. */
export function useChart(text: string, name: string, options: UseChartOptions = {}): ReadChart {
  const { first = noChart, isLookedOver = false, create = createChartWorker } = options;
  const { answer, isBusy, failure, ask } = useWorker<ChartQuestion, ChartAnswer>(create, first);
  useEffect(() => {
    if (text.trim() !== "" && text !== answer.text) ask({ text, name, isLookedOver }, 200);
  }, [text, name, isLookedOver, ask, answer.text]);
  return useMemo(() => {
    const current = text.trim() === "" ? noChart : answer;
    return { ...current, isBusy, failure };
  }, [answer, text, isBusy, failure]);
}
