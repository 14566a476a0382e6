import type { DimensionId } from "@tapewise/landmarks";
import type { LengthUnit } from "@tapewise/units";
import { MEASURER_WORDS, REPEAT_WORDS } from "./data.ts";
import { namedDimension } from "./named-dimension.ts";
import { plainWords, splitHeader } from "./split-header.ts";

/** Whose reading a column of the wide layout holds, and which one. */
export interface WideColumn {
  /** Absent where the header names no measurer: `Reading 2`. */
  readonly measurer?: string;
  /** Absent where the header has no number: then the measurer's columns are counted in their order. */
  readonly repeat?: number;
  readonly unit?: LengthUnit;
  readonly dimension?: DimensionId;
}

const LONGEST_HEADER = 100;
const MARKED_REPEAT =
  /^(.*?)(?:[\s_.-]+|(?<=\d))(?:r|t|rep|repeat|replicate|reading|trial|round)[\s_.#-]*(\d+)$/i;
const NUMBERED = /^(.*?)[\s_.#(-]*?(\d+)\)?$/;

/**
 * Reads a header of the wide layout: `A1`, `Ann 2 (cm)`, `Observer 1 reading 2`, `O1R2`, `Reading 3`, `Ann`.
 * A number behind a name is the repeat; behind a word such as `observer` it is part of the measurer's name.
 */
export function wideColumn(header: string): WideColumn | undefined {
  const { label, unit } = splitHeader(header.slice(0, LONGEST_HEADER));
  const { rest, dimension } = withoutDimension(label);
  const stated = {
    ...(unit === undefined ? {} : { unit }),
    ...(dimension === undefined ? {} : { dimension }),
  };
  if (rest === "") return dimension === undefined && unit === undefined ? undefined : stated;
  const marked = MARKED_REPEAT.exec(rest);
  if (marked !== null && (marked[1] ?? "") !== "") {
    return { measurer: tidyName(marked[1] ?? ""), repeat: Number(marked[2]), ...stated };
  }
  const numbered = NUMBERED.exec(rest);
  if (numbered === null)
    return REPEAT_WORDS.includes(plainWords(rest)) ? stated : { measurer: rest, ...stated };
  const word = plainWords(numbered[1] ?? "");
  const repeat = Number(numbered[2]);
  if (word === "" || REPEAT_WORDS.includes(word)) return { repeat, ...stated };
  if (MEASURER_WORDS.includes(word)) return { measurer: tidyName(rest), ...stated };
  return { measurer: tidyName(numbered[1] ?? ""), repeat, ...stated };
}

function tidyName(text: string): string {
  return text.replace(/[\s_.#(-]+$/, "").trim();
}

/** A header without the dimension that it begins with: `torso-length A1`. */
function withoutDimension(label: string): { readonly rest: string; readonly dimension?: DimensionId } {
  const words = label.split(/[\s_]+/);
  for (let count = Math.min(words.length, 4); count >= 1; count--) {
    const dimension = namedDimension(words.slice(0, count).join(" "))?.dimension;
    if (dimension !== undefined) return { rest: words.slice(count).join(" "), dimension };
  }
  return { rest: label };
}
