import { afterwards } from "tapewise";
import { type ChooseState, chooseKeys, emptyState } from "./choose-state.ts";
import type { Key, Keys } from "./fragment.ts";

/** What stands in the fields of the check, and what was seen so far. */
export interface ArrivesState {
  /** Readings, person and charts, as the page that chooses a size has them. */
  readonly choose: ChooseState;
  /** The size that is on the body; blank for the one that would be chosen. */
  readonly size: string;
  readonly belt: string;
  /** What was seen in the first look, in the order in which it was asked. */
  readonly seen: readonly afterwards.GivenAnswer[];
  /** What was seen in the second one; `undefined` until it has begun. */
  readonly again: readonly afterwards.GivenAnswer[] | undefined;
}

export const emptyArrives: ArrivesState = {
  choose: emptyState,
  size: "",
  belt: "",
  seen: [],
  again: undefined,
};

/** Every item once, and once more where answers contradict each other; a link may hold no more. */
const MOST_ANSWERS = 18;
const LONGEST_NAME = 80;
const NONE_YET = "begun";

function readAnswers(value: string): readonly afterwards.GivenAnswer[] | undefined {
  const parts = value.split(",");
  if (parts.length > MOST_ANSWERS) return undefined;
  const given = parts.flatMap((part): readonly afterwards.GivenAnswer[] => {
    const [name, answer] = part.split(".");
    const item = afterwards.bodyCheckItems.find(({ id }) => id === name);
    const found = item?.answers.find(({ id }) => id === answer);
    return item === undefined || found === undefined ? [] : [{ item: item.id, answer: found.id }];
  });
  return given.length === parts.length ? given : undefined;
}

function writeAnswers(given: readonly afterwards.GivenAnswer[]): string {
  return given.map(({ item, answer }) => `${item}.${answer}`).join(",");
}

function nameKey(name: "size" | "belt"): Key<ArrivesState> {
  return {
    read: (value, state) => (value.length > LONGEST_NAME ? undefined : { ...state, [name]: value }),
    write: (state) => (state[name] === "" ? undefined : state[name]),
  };
}

/** What can stand in the page's fragment: all keys of the page that chooses a size, and the check's own. */
export function arrivesKeys(shelf: readonly string[]): Keys<ArrivesState> {
  const choosing = Object.entries(chooseKeys(shelf)).map(
    ([name, key]): readonly [string, Key<ArrivesState>] => [
      name,
      {
        read: (value, state) => {
          const choose = key.read(value, state.choose);
          return choose === undefined ? undefined : { ...state, choose };
        },
        write: (state) => key.write(state.choose),
      },
    ],
  );
  return {
    ...Object.fromEntries(choosing),
    size: nameKey("size"),
    "worn-belt": nameKey("belt"),
    seen: {
      read: (value, state) => {
        const seen = readAnswers(value);
        return seen === undefined ? undefined : { ...state, seen };
      },
      write: (state) => (state.seen.length === 0 ? undefined : writeAnswers(state.seen)),
    },
    again: {
      read: (value, state) => {
        const again = value === NONE_YET ? [] : readAnswers(value);
        return again === undefined ? undefined : { ...state, again };
      },
      write: ({ again }) =>
        again === undefined ? undefined : again.length === 0 ? NONE_YET : writeAnswers(again),
    },
  };
}
