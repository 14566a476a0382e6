import type { Wanted } from "./fields.ts";
import { OUTCOME_MOMENT } from "./moment.ts";
import { exchangeReasons, type OutcomeRow, outcomeKinds } from "./outcome-row.ts";

/** The longest name in a row, in UTF-16 code units (assumption). */
export const LONGEST_NAME = 200;

/** A name of anything. */
export const wantedName: Wanted<string> = {
  words: `a text of 1 to ${LONGEST_NAME} characters`,
  test: (value): value is string =>
    typeof value === "string" && value.length > 0 && value.length <= LONGEST_NAME,
};

export const wantedMoment: Wanted<string> = {
  words: "an ISO 8601 date such as 2026-05-04, or a date and time with its offset from UTC",
  test: (value): value is string => typeof value === "string" && OUTCOME_MOMENT.test(value),
};

export const wantedOutcome: Wanted<OutcomeRow["outcome"]> = /* @__PURE__ */ oneOf(outcomeKinds);

export const wantedReason: Wanted<NonNullable<OutcomeRow["reason"]>> = /* @__PURE__ */ oneOf(exchangeReasons);

export const wantedPositive: Wanted<number> = {
  words: "a finite number above 0",
  test: (value): value is number => typeof value === "number" && Number.isFinite(value) && value > 0,
};

export const wantedFromZero: Wanted<number> = {
  words: "a finite number from 0 up",
  test: (value): value is number => typeof value === "number" && Number.isFinite(value) && value >= 0,
};

function oneOf<const T extends string>(choices: readonly T[]): Wanted<T> {
  return {
    words: `one of ${choices.join(", ")}`,
    test: (value): value is T => typeof value === "string" && (choices as readonly string[]).includes(value),
  };
}
