import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { Words } from "../words/index.ts";
import { type Keys, LONGEST_FRAGMENT, readFragment, roughLength, writeFragment } from "../work/fragment.ts";

/** A change of the state: while somebody types, or as a step of its own that the back button undoes. */
export type Change<State> = (next: State | ((state: State) => State), kind?: "typing" | "step") => void;

/** A page's state, kept in the fragment of its address. */
export interface FragmentState<State> {
  readonly state: State;
  readonly change: Change<State>;
  /** What of the link that was opened could not be used. */
  readonly problems: readonly string[];
  /** Whether the fragment has been looked at: before that the page shows what was rendered for everybody. */
  readonly ready: boolean;
  /** Length of the fragment where it is too long to be kept. */
  readonly tooLong: number | undefined;
}

interface FragmentOptions<State> {
  /** What the page was rendered with. */
  readonly start: State;
  /** What a link begins from: keys that it leaves out mean this. */
  readonly empty: State;
  readonly keys: Keys<State>;
  readonly words: Words["parts"];
}

/** Typing settles before the address is written: browsers limit how often that may happen. */
const SETTLE_MS = 350;

/**
 * Keeps a state in the fragment. It is read after hydration, never while rendering, so that the page which
 * was rendered beforehand and the first one of the browser are the same.
 */
export function useFragment<State>(options: FragmentOptions<State>): FragmentState<State> {
  const { start, empty, keys, words } = options;
  const [state, setState] = useState(start);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [ready, setReady] = useState(false);
  const [tooLong, setTooLong] = useState<number | undefined>(undefined);
  const latest = useRef(start);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const write = useCallback(
    (kind: "typing" | "step") => {
      const rough = roughLength(latest.current, keys);
      const fragment = rough > LONGEST_FRAGMENT ? undefined : writeFragment(latest.current, keys);
      const length = fragment?.length ?? rough;
      setTooLong(length > LONGEST_FRAGMENT ? length : undefined);
      if (length > LONGEST_FRAGMENT || `#${fragment}` === location.hash) return;
      if (kind === "step") history.pushState(null, "", `#${fragment}`);
      else history.replaceState(null, "", `#${fragment}`);
    },
    [keys],
  );

  useEffect(() => {
    const look = () => {
      clearTimeout(timer.current);
      const read = readFragment(location.hash, empty, keys, words);
      const next = read?.state ?? start;
      latest.current = next;
      setState(() => next);
      setProblems(read?.problems ?? []);
      setReady(true);
    };
    look();
    // Covers the back button, and a link that is pasted over the address.
    const onChange = () => look();
    addEventListener("popstate", onChange);
    return () => removeEventListener("popstate", onChange);
  }, [empty, keys, start, words]);

  const change = useCallback<Change<State>>(
    (next, kind = "typing") => {
      const value = typeof next === "function" ? (next as (state: State) => State)(latest.current) : next;
      clearTimeout(timer.current);
      if (kind === "step") {
        // What was typed before the step belongs to the entry that the back button returns to.
        write("typing");
        latest.current = value;
        write("step");
      } else {
        latest.current = value;
        timer.current = setTimeout(() => write("typing"), SETTLE_MS);
      }
      setState(() => value);
      setProblems([]);
    },
    [write],
  );

  return { state, change, problems, ready, tooLong };
}
