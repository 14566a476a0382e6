import type { Place } from "@tapewise/outcome";

/** One property of an object, with the place of its name. */
export interface SourceEntry {
  readonly key: string;
  readonly place?: Place;
  readonly value: Source;
}

/**
 * A JSON value as the importer sees it, whether it comes from text (with places) or from memory
 * (without). Objects keep their properties as a list, so that a repeated key is not lost and a key
 * such as `__proto__` is a key like any other.
 */
export type Source =
  | { readonly kind: "object"; readonly entries: readonly SourceEntry[]; readonly place?: Place }
  | { readonly kind: "list"; readonly items: readonly Source[]; readonly place?: Place }
  | { readonly kind: "text"; readonly value: string; readonly place?: Place }
  | { readonly kind: "number"; readonly value: number; readonly place?: Place }
  | { readonly kind: "other"; readonly value: unknown; readonly place?: Place };

/** What an issue shows of a source: the scalar itself, or something of the same kind. */
export function receivedOf(source: Source): unknown {
  switch (source.kind) {
    case "object":
      return {};
    case "list":
      return source.items;
    default:
      return source.value;
  }
}
