import { useCallback, useEffect, useRef, useState } from "preact/hooks";

/** What a worker is asked and answers: each with the number of the question. */
export interface Asked<Question> {
  readonly id: number;
  readonly question: Question;
}

export type Answered<Answer> =
  | { readonly id: number; readonly answer: Answer }
  | { readonly id: number; readonly failure: string };

/** The latest answer of a worker. */
export interface WorkerAnswer<Question, Answer> {
  readonly answer: Answer;
  /** Whether a newer question is still being worked on. */
  readonly isBusy: boolean;
  readonly failure: string | undefined;
  readonly ask: (question: Question, delayMs?: number) => void;
}

/**
 * Asks a worker, so that the page itself never stops: it is started with the first question, it works on one
 * question at a time, and of those that come meanwhile only the last one is asked.
 */
export function useWorker<Question, Answer>(
  create: () => Worker,
  first: Answer,
): WorkerAnswer<Question, Answer> {
  const [answer, setAnswer] = useState(first);
  const [isBusy, setBusy] = useState(false);
  const [failure, setFailure] = useState<string | undefined>(undefined);
  const worker = useRef<Worker | undefined>(undefined);
  const count = useRef(0);
  const pending = useRef<number | undefined>(undefined);
  const waiting = useRef<{ readonly question: Question } | undefined>(undefined);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const send = useCallback(
    (question: Question) => {
      if (worker.current === undefined) {
        worker.current = create();
        worker.current.onmessage = (event: MessageEvent<Answered<Answer>>) => {
          if (event.data.id !== pending.current) return;
          pending.current = undefined;
          const next = waiting.current;
          waiting.current = undefined;
          if (next !== undefined) {
            send(next.question);
            return;
          }
          setBusy(false);
          if ("failure" in event.data) {
            setFailure(event.data.failure);
          } else {
            const { answer: value } = event.data;
            setFailure(undefined);
            setAnswer(() => value);
          }
        };
        worker.current.onerror = (event) => {
          pending.current = undefined;
          setBusy(false);
          setFailure(event.message === "" ? "worker" : event.message);
        };
      }
      if (pending.current !== undefined) {
        waiting.current = { question };
        return;
      }
      count.current += 1;
      pending.current = count.current;
      worker.current.postMessage({ id: count.current, question } satisfies Asked<Question>);
    },
    [create],
  );

  const ask = useCallback(
    (question: Question, delayMs = 0) => {
      setBusy(true);
      clearTimeout(timer.current);
      timer.current = setTimeout(() => send(question), delayMs);
    },
    [send],
  );

  useEffect(
    () => () => {
      clearTimeout(timer.current);
      worker.current?.terminate();
    },
    [],
  );

  return { answer, isBusy, failure, ask };
}
