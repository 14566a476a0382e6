import type { SizeChart } from "@tapewise/charts";
import type { PriorChoice } from "../person/choose-prior.ts";
import { createBlockAnswerer } from "./lane/answer-block.ts";
import { createBytePage } from "./lane/byte-page.ts";

/** Answers to some lines, one line each, and whether any of them is no choice. */
export interface AnsweredLines {
  readonly bytes: Uint8Array;
  readonly anyBad: boolean;
}

/** Answers whole lines in UTF-8, whose numbers go on from call to call. */
export type LineAnswerer = (lines: Uint8Array) => AnsweredLines;

const PAGE_BYTES = 1 << 18;
const LINE_FEED = 10;

/**
 * Makes what answers many lines of the batch contract at once, as `tapewise batch` does: the same answers as those of
 * {@link chooseLine}, some tens of times as fast. Blank lines have no answer; the last line may lack its end.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { createLineAnswerer } from "tapewise/batch";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const answer = createLineAnswerer([chart]);
 * const lines = '{"readings":{"torso-length":["45 cm","45.2 cm"]}}\n{"readings":{"torso-length":["45"]}}\n';
 * const { bytes, anyBad } = answer(new TextEncoder().encode(lines));
 * const answers = new TextDecoder().decode(bytes).trim().split("\n").map((line) => JSON.parse(line));
 * [answers[0].choices[0].pick, answers[1].issues[0].code, anyBad]; // => ["M", "length-no-unit", true]
 * ```
 */
export function createLineAnswerer(
  charts: readonly SizeChart[],
  { prior = "automatic" }: { readonly prior?: PriorChoice } = {},
): LineAnswerer {
  const answer = createBlockAnswerer(charts, prior);
  const page = createBytePage(PAGE_BYTES);
  let first = 1;
  return (lines) => {
    page.length = 0;
    const anyBad = answer({ first, bytes: lines }, page);
    first += countLines(lines);
    return { bytes: page.bytes.slice(0, page.length), anyBad };
  };
}

function countLines(bytes: Uint8Array): number {
  let count = bytes.length > 0 && bytes.at(-1) !== LINE_FEED ? 1 : 0;
  for (let at = bytes.indexOf(LINE_FEED); at >= 0; at = bytes.indexOf(LINE_FEED, at + 1)) count += 1;
  return count;
}
