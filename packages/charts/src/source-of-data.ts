import type { Source, SourceEntry } from "./source.ts";

/** A chart is four levels deep; below that a value is only shown, never read. */
const DEEPEST = 6;

/**
 * Looks at any value as if it had been parsed from JSON. Nothing is called but getters and proxies'
 * traps, and what these throw makes the value unreadable (`other`), never an exception. A list longer
 * than `longestList` or an object that holds itself is `other` too, so that no input can hang.
 */
export function sourceOfData(data: unknown, longestList: number): Source {
  return view(data, longestList, DEEPEST, []);
}

function view(data: unknown, longest: number, depth: number, parents: readonly object[]): Source {
  if (typeof data === "string") return { kind: "text", value: data };
  if (typeof data === "number") return { kind: "number", value: data };
  if (typeof data !== "object" || data === null) return { kind: "other", value: data };
  if (depth === 0 || parents.includes(data)) return { kind: "other", value: {} };
  try {
    const inside = [...parents, data];
    if (!Array.isArray(data)) return { kind: "object", entries: entriesOf(data, longest, depth, inside) };
    if (data.length > longest) return { kind: "other", value: data };
    const items = Array.from(data, (item: unknown) => view(item, longest, depth - 1, inside));
    return { kind: "list", items };
  } catch {
    return { kind: "other", value: {} };
  }
}

function entriesOf(
  data: object,
  longest: number,
  depth: number,
  parents: readonly object[],
): readonly SourceEntry[] {
  const entries: SourceEntry[] = [];
  for (const key of Object.keys(data).slice(0, longest)) {
    const value: unknown = Reflect.get(data, key);
    // An absent value, as `{ maker: undefined }` is in memory, is not in the JSON.
    if (value !== undefined) entries.push({ key, value: view(value, longest, depth - 1, parents) });
  }
  return entries;
}
