import { parse, type ValueNode } from "@humanwhocodes/momoa";
import type { PlaceAt } from "@tapewise/tables";
import type { Source } from "./source.ts";

/** Where JSON text stops being JSON. */
export interface JsonFault {
  readonly kind: "syntax" | "unfinished" | "too-deep";
  readonly offset: number;
}

export type JsonReading = { readonly source: Source } | { readonly fault: JsonFault };

/**
 * Reads JSON text into a source with places. The depth is measured before the recursive parser sees
 * the text, so that no nesting can exhaust the stack.
 */
export function sourceOfJson(text: string, deepest: number, placeAt: PlaceAt): JsonReading {
  const nesting = measureNesting(text, deepest);
  if (nesting.tooDeepAt !== undefined) return { fault: { kind: "too-deep", offset: nesting.tooDeepAt } };
  try {
    return { source: view(parse(text).body, placeAt) };
  } catch (error) {
    const offset = offsetOf(error);
    // The parser names the last thing it saw; what is missing belongs at the end of the text.
    const unfinished = nesting.openAtEnd && (offset === 0 || LAST_TOKEN.test(text.slice(offset)));
    return { fault: unfinished ? { kind: "unfinished", offset: text.length } : { kind: "syntax", offset } };
  }
}

/** Nothing, or a single token, up to the end of the text. */
const LAST_TOKEN = /^(?:"[^"]*"?|[^\s,:{}[\]"]+|[,:{}[\]])?\s*$/;

/** The parser's errors carry an offset; anything else it might throw is placed at the beginning. */
function offsetOf(error: unknown): number {
  const offset: unknown = error instanceof Error && "offset" in error ? error.offset : undefined;
  return typeof offset === "number" ? offset : 0;
}

interface Nesting {
  readonly tooDeepAt?: number;
  /** Whether a bracket or a string is still open at the end. */
  readonly openAtEnd: boolean;
}

function measureNesting(text: string, deepest: number): Nesting {
  let depth = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const char = text[at];
    if (inString) {
      if (char === "\\") at++;
      else if (char === '"') inString = false;
    } else if (char === '"') inString = true;
    else if (char === "{" || char === "[") {
      if (++depth > deepest) return { tooDeepAt: at, openAtEnd: true };
    } else if (char === "}" || char === "]") depth--;
  }
  return { openAtEnd: depth > 0 || inString };
}

function view(node: ValueNode, placeAt: PlaceAt): Source {
  const place = placeAt(node.loc.start.offset);
  switch (node.type) {
    case "Object":
      return {
        kind: "object",
        place,
        entries: node.members.map(({ name, value }) => ({
          key: name.type === "String" ? name.value : name.name,
          place: placeAt(name.loc.start.offset),
          value: view(value, placeAt),
        })),
      };
    case "Array":
      return { kind: "list", place, items: node.elements.map((element) => view(element.value, placeAt)) };
    case "String":
      return { kind: "text", place, value: node.value };
    case "Number":
      return { kind: "number", place, value: node.value };
    case "Boolean":
      return { kind: "other", place, value: node.value };
    default:
      return { kind: "other", place, value: null };
  }
}
