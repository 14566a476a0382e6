import type { SizeChart } from "@tapewise/charts";
import type { PriorChoice } from "../../person/choose-prior.ts";
import { answerRawLine, LONGEST_LINE } from "../answer-raw-line.ts";
import { isChoice } from "../is-choice.ts";
import type { RawLine } from "../line-splitter.ts";
import { type BytePage, makeRoom } from "./byte-page.ts";
import { cleanJson } from "./clean-json.ts";
import { createLane } from "./create-lane.ts";
import type { LineBlock } from "./line-blocks.ts";

/** Answers whole lines on a page, and tells whether any of them got no choice. */
export type BlockAnswerer = (block: LineBlock, page: BytePage) => boolean;

const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;

/** Answers blocks of lines: usual ones the quick way, all others one by one. */
export function createBlockAnswerer(charts: readonly SizeChart[], prior: PriorChoice): BlockAnswerer {
  const lane = createLane(charts, prior);
  const encoder = new TextEncoder();
  const answerSlowly = (line: RawLine, page: BytePage): boolean => {
    const answer = answerRawLine(line, charts, { prior });
    if (answer === undefined) return false;
    const text = `${cleanJson(answer)}\n`;
    // A letter takes up to three bytes.
    makeRoom(page, text.length * 3);
    page.length += encoder.encodeInto(text, page.bytes.subarray(page.length)).written;
    return !isChoice(answer);
  };
  return ({ first, bytes }, page) => {
    if (bytes === undefined) return answerSlowly({ number: first }, page);
    let anyBad = false;
    let number = first;
    for (let from = 0; from < bytes.length; number += 1) {
      const feed = bytes.indexOf(LINE_FEED, from);
      const end = feed < 0 ? bytes.length : feed;
      const to = end > from && bytes[end - 1] === CARRIAGE_RETURN ? end - 1 : end;
      if (!lane(bytes, from, to, page)) {
        const raw = to - from > LONGEST_LINE ? { number } : { number, bytes: bytes.subarray(from, to) };
        if (answerSlowly(raw, page)) anyBad = true;
      }
      from = end + 1;
    }
    return anyBad;
  };
}
