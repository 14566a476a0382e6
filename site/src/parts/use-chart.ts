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

function createWorker(): Worker {
  return new Worker(new URL("../workers/chart.ts", import.meta.url), { type: "module" });
}

/** A chart that is read in a worker while its text is being written. */
export interface ReadChart extends ChartAnswer {
  readonly isBusy: boolean;
  readonly failure: string | undefined;
}

/** Reads the text of a chart whenever it changes; nothing is started while there is none. */
export function useChart(text: string, name: string, first: ChartAnswer = noChart): ReadChart {
  const { answer, isBusy, failure, ask } = useWorker<ChartQuestion, ChartAnswer>(createWorker, first);
  useEffect(() => {
    if (text.trim() !== "" && text !== answer.text) ask({ text, name }, 200);
  }, [text, name, ask, answer.text]);
  return useMemo(() => {
    const current = text.trim() === "" ? noChart : answer;
    return { ...current, isBusy, failure };
  }, [answer, text, isBusy, failure]);
}
