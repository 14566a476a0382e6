import type { IssuePath } from "@tapewise/outcome";

const [QUOTE, BACKSLASH, COMMA] = [0x22, 0x5c, 0x2c];
const [OPEN_OBJECT, CLOSE_OBJECT, OPEN_LIST, CLOSE_LIST] = [0x7b, 0x7d, 0x5b, 0x5d];

/** An object or a list that is not closed yet. */
interface Container {
  /** The keys so far; a list has none. */
  readonly keys: Set<string> | undefined;
  /** The key or the position that is being read. */
  step: string | number;
  awaitsKey: boolean;
}

/**
 * The paths of the keys that an object of a JSON text names again. `JSON.parse` keeps the last one and
 * says nothing of the others. The text must be valid JSON; it is gone through once.
 */
export function findRepeatedKeys(json: string): readonly IssuePath[] {
  const repeated: IssuePath[] = [];
  const open: Container[] = [];
  let inner: Container | undefined;
  for (let at = 0; at < json.length; at += 1) {
    switch (json.charCodeAt(at)) {
      case QUOTE: {
        const end = endOfText(json, at);
        if (inner?.awaitsKey === true) {
          const key = textBetween(json, at, end);
          inner.step = key;
          inner.awaitsKey = false;
          if (inner.keys?.has(key) === true) repeated.push(open.map(({ step }) => step));
          inner.keys?.add(key);
        }
        at = end;
        break;
      }
      case OPEN_OBJECT:
        inner = { keys: new Set(), step: "", awaitsKey: true };
        open.push(inner);
        break;
      case OPEN_LIST:
        inner = { keys: undefined, step: 0, awaitsKey: false };
        open.push(inner);
        break;
      case CLOSE_OBJECT:
      case CLOSE_LIST:
        open.pop();
        inner = open.at(-1);
        break;
      case COMMA:
        if (typeof inner?.step === "number") inner.step += 1;
        else if (inner !== undefined) inner.awaitsKey = true;
        break;
    }
  }
  return repeated;
}

/** Where the text that begins with a quotation mark ends with one. */
function endOfText(json: string, start: number): number {
  let at = start + 1;
  while (at < json.length && json.charCodeAt(at) !== QUOTE) {
    at += json.charCodeAt(at) === BACKSLASH ? 2 : 1;
  }
  return at;
}

/** Two spellings of one key, one of them with escapes, are the same key. */
function textBetween(json: string, start: number, end: number): string {
  const plain = json.slice(start + 1, end);
  return plain.includes("\\") ? String(JSON.parse(json.slice(start, end + 1))) : plain;
}
