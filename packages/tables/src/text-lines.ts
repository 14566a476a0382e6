import type { Place } from "@tapewise/outcome";

/** Finds the line and column of offsets in one text. */
export type PlaceAt = (offset: number) => Place;

/**
 * Prepares a text for looking up places. A line ends with `\n`, `\r\n` or `\r`, as editors count.
 *
 * @example
 * ```ts
 * import { placesIn } from "@tapewise/tables";
 * placesIn("ab\ncd", "crew.json")(4); // => { file: "crew.json", line: 2, column: 2 }
 * ```
 */
export function placesIn(text: string, file: string | undefined): PlaceAt {
  const starts: number[] = [0];
  for (let at = 0; at < text.length; at++) {
    const char = text.charCodeAt(at);
    if (char === 10 || (char === 13 && text.charCodeAt(at + 1) !== 10)) starts.push(at + 1);
  }
  return (wanted) => {
    // The second half of a line end stands where the first does.
    const offset = wanted > 0 && text.startsWith("\r\n", wanted - 1) ? wanted - 1 : wanted;
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return placeOf(low + 1, offset - (starts[low] ?? 0) + 1, file);
  };
}

/**
 * A place, with its file where there is one.
 *
 * @example
 * ```ts
 * import { placeOf } from "@tapewise/tables";
 * placeOf(2, 7, undefined); // => { line: 2, column: 7 }
 * ```
 */
export function placeOf(line: number, column: number, file: string | undefined): Place {
  return file === undefined ? { line, column } : { file, line, column };
}
