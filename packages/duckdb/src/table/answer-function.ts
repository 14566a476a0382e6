/// <reference types="node" />
import { type DuckDBConnection, DuckDBScalarFunction, VARCHAR } from "@duckdb/node-api";
import type { charts } from "tapewise";
import { createLineAnswerer, type PriorChoice } from "tapewise/batch";

/** How many people were answered, and how many of them got no choice. */
export interface AnswerCount {
  readonly people: number;
  readonly withoutChoice: number;
}

/** The name of the function that answers a line of the batch contract. */
export const ANSWER = "tapewise_answer";

/** How the answer of a line without an id begins that got issues in place of a choice. */
const NO_CHOICE = '{"id":null,"issues":';

/** Gives a connection the function that answers lines; what comes back counts them. */
export function registerAnswers(
  connection: DuckDBConnection,
  shelf: readonly charts.SizeChart[],
  prior: PriorChoice,
): () => AnswerCount {
  const answer = createLineAnswerer(shelf, { prior });
  const [encoder, decoder] = [new TextEncoder(), new TextDecoder()];
  let [people, withoutChoice] = [0, 0];
  connection.registerScalarFunction(
    DuckDBScalarFunction.create({
      name: ANSWER,
      returnType: VARCHAR,
      parameterTypes: [VARCHAR],
      volatile: true,
      mainFunction: (info, input, output) => {
        try {
          const lines = input.getColumnValues(0);
          // Every line is an object on one line, so that every one has its answer.
          const { bytes } = answer(encoder.encode(`${lines.join("\n")}\n`));
          const answers = decoder.decode(bytes).split("\n");
          for (let k = 0; k < lines.length; k += 1) {
            const text = answers[k] ?? "";
            if (text.startsWith(NO_CHOICE)) withoutChoice += 1;
            output.setItem(k, text);
          }
          output.flush();
          people += lines.length;
        } catch (error) {
          info.setError(error instanceof Error ? error.message : String(error));
        }
      },
    }),
  );
  return () => ({ people, withoutChoice });
}
