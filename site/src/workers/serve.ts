import type { Answered, Asked } from "../parts/use-worker.ts";

/** The side of a worker that a page talks to. */
interface WorkerSide {
  onmessage: ((event: MessageEvent) => void) | null;
  postMessage: (message: unknown) => void;
}

/** Answers each question that a page asks. A fault becomes an answer too, so that the page can tell it. */
export function serve<Question, Answer>(answerTo: (question: Question) => Answer | Promise<Answer>): void {
  const side = globalThis as unknown as WorkerSide;
  side.onmessage = async ({ data }: MessageEvent<Asked<Question>>) => {
    const { id, question } = data;
    let message: Answered<Answer>;
    try {
      message = { id, answer: await answerTo(question) };
    } catch (error) {
      message = { id, failure: error instanceof Error ? error.message : String(error) };
    }
    side.postMessage(message);
  };
}
