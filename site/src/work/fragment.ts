import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";

/** The version of what stands in a fragment. A page that changes the meaning of a key raises it. */
const VERSION = "1";

/** Longest fragment that is read or written: what mail programs and chats carry unharmed. */
export const LONGEST_FRAGMENT = 8000;

/** One key of a fragment: how its value is read into the state, and written from it. */
export interface Key<State> {
  /** The state with the value in it, or `undefined` where it is no value of this key. */
  readonly read: (value: string, state: State) => State | undefined;
  /** The value, or `undefined` where the state has nothing to say under this key. */
  readonly write: (state: State) => string | undefined;
}

/** What can stand in a page's fragment, by key. */
export type Keys<State> = Readonly<Record<string, Key<State>>>;

/** A state read from a fragment, and what of it could not be used, in words. */
export interface FromFragment<State> {
  readonly state: State;
  readonly problems: readonly string[];
}

/**
 * Reads a page's state from the fragment of its address. Whatever stands there is only ever taken as text:
 * what is no value of its key is told and left out, and a fragment that is too long is not read at all.
 * `undefined` where the fragment holds no state.
 */
export function readFragment<State>(
  hash: string,
  empty: State,
  keys: Keys<State>,
  words: Words["parts"],
): FromFragment<State> | undefined {
  const text = hash.replace(/^#/, "");
  if (!/(?:^|&)v=/.test(text.slice(0, LONGEST_FRAGMENT))) return undefined;
  if (text.length > LONGEST_FRAGMENT) {
    return { state: empty, problems: [fill(words.linkLong, { limit: LONGEST_FRAGMENT })] };
  }
  const entries = [...new URLSearchParams(text)];
  const version = entries.find(([key]) => key === "v")?.[1] ?? "";
  if (version !== VERSION)
    return { state: empty, problems: [fill(words.linkVersion, { value: shorten(version) })] };

  let state = empty;
  const problems: string[] = [];
  const seen = new Set<string>(["v"]);
  for (const [key, value] of entries) {
    if (key === "v") continue;
    const known = Object.hasOwn(keys, key) ? keys[key] : undefined;
    if (known === undefined) {
      problems.push(fill(words.linkUnknown, { key: shorten(key) }));
    } else if (seen.has(key)) {
      problems.push(fill(words.linkTwice, { key }));
    } else {
      seen.add(key);
      const next = known.read(value, state);
      if (next === undefined) problems.push(fill(words.linkValue, { key, value: shorten(value) }));
      else state = next;
    }
  }
  return { state, problems };
}

/** About how long a state is as a fragment: enough to tell that it is too long, without writing it. */
export function roughLength<State>(state: State, keys: Keys<State>): number {
  return Object.values(keys).reduce((sum, { write }) => sum + (write(state)?.length ?? 0), 0);
}

/** Writes a state as a fragment, without the `#`; keys that have nothing to say are left out. */
export function writeFragment<State>(state: State, keys: Keys<State>): string {
  const params = new URLSearchParams({ v: VERSION });
  for (const [key, { write }] of Object.entries(keys)) {
    const value = write(state);
    if (value !== undefined) params.set(key, value);
  }
  // These marks need no escape in a fragment, and a link should be readable.
  return String(params)
    .replaceAll("%2C", ",")
    .replaceAll("%3B", ";")
    .replaceAll("%2F", "/")
    .replaceAll("%27", "'");
}

/** Control characters and great length say nothing to a reader. */
function shorten(text: string): string {
  const clean = text.replace(/\p{C}/gu, "�");
  return clean.length > 40 ? `${clean.slice(0, 40)}…` : clean;
}
