import type { Place } from "@tapewise/outcome";
import type { PlaceAt } from "@tapewise/tables";

/** A JSON value with its place. A scalar keeps the text that it was written with, so that 43.20 keeps its zero. */
export type JsonNode =
  | { readonly kind: "object"; readonly entries: readonly JsonEntry[]; readonly place: Place }
  | { readonly kind: "list"; readonly items: readonly JsonNode[]; readonly place: Place }
  | { readonly kind: "text" | "number" | "word"; readonly text: string; readonly place: Place };

/** A property of an object; a repeated key is kept. */
export interface JsonEntry {
  readonly key: string;
  readonly place: Place;
  readonly value: JsonNode;
}

/** JSON text as a tree, or where it stops being JSON (or goes deeper than it may). */
export type JsonReading = { readonly node: JsonNode } | { readonly fault: Place };

const TOKEN =
  /[ \t\n\r]*(?:("(?:[^"\\]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)|(true|false|null)|([{}[\],:]))/y;

interface Token {
  readonly kind: "text" | "number" | "word" | "sign";
  readonly text: string;
  readonly offset: number;
}

/** Reads JSON text (RFC 8259) with the place of every value and key. */
export function readJson(text: string, deepest: number, placeAt: PlaceAt): JsonReading {
  const lexer = new RegExp(TOKEN.source, "y");
  let faultAt = 0;
  const take = (): Token | undefined => {
    const start = lexer.lastIndex;
    const match = lexer.exec(text);
    if (match === null) {
      faultAt = start + (/^[ \t\n\r]*/.exec(text.slice(start))?.[0].length ?? 0);
      return undefined;
    }
    const [, quoted, number, word, sign] = match;
    const found = quoted ?? number ?? word ?? sign ?? "";
    const kind = quoted ? "text" : number ? "number" : word ? "word" : "sign";
    faultAt = lexer.lastIndex - found.length;
    return { kind, text: found, offset: faultAt };
  };
  const value = (token: Token | undefined, depth: number): JsonNode | undefined => {
    if (token === undefined || depth > deepest) return undefined;
    const place = placeAt(token.offset);
    if (token.kind === "text") {
      const decoded = decode(token.text);
      return decoded === undefined ? undefined : { kind: "text", text: decoded, place };
    }
    if (token.kind !== "sign") return { kind: token.kind, text: token.text, place };
    if (token.text === "[") return list(place, depth);
    return token.text === "{" ? object(place, depth) : undefined;
  };
  const list = (place: Place, depth: number): JsonNode | undefined => {
    const items: JsonNode[] = [];
    let token = take();
    if (token?.text === "]" && token.kind === "sign") return { kind: "list", items, place };
    for (;;) {
      const item = value(token, depth + 1);
      if (item === undefined) return undefined;
      items.push(item);
      const sign = take();
      if (sign?.kind !== "sign") return undefined;
      if (sign.text === "]") return { kind: "list", items, place };
      if (sign.text !== ",") return undefined;
      token = take();
    }
  };
  const object = (place: Place, depth: number): JsonNode | undefined => {
    const entries: JsonEntry[] = [];
    let token = take();
    if (token?.text === "}" && token.kind === "sign") return { kind: "object", entries, place };
    for (;;) {
      if (token?.kind !== "text") return undefined;
      const key = decode(token.text);
      if (key === undefined) return undefined;
      const keyPlace = placeAt(token.offset);
      const colon = take();
      if (colon?.kind !== "sign" || colon.text !== ":") return undefined;
      const item = value(take(), depth + 1);
      if (item === undefined) return undefined;
      entries.push({ key, place: keyPlace, value: item });
      const sign = take();
      if (sign?.kind !== "sign") return undefined;
      if (sign.text === "}") return { kind: "object", entries, place };
      if (sign.text !== ",") return undefined;
      token = take();
    }
  };
  const node = value(take(), 1);
  if (node === undefined) return { fault: placeAt(faultAt) };
  const rest = /^[ \t\n\r]*/.exec(text.slice(lexer.lastIndex))?.[0].length ?? 0;
  const end = lexer.lastIndex + rest;
  return end === text.length ? { node } : { fault: placeAt(end) };
}

/** The text of a quoted token; nothing where control characters stand in it. */
function decode(quoted: string): string | undefined {
  try {
    return String(JSON.parse(quoted));
  } catch {
    return undefined;
  }
}
