import type { JSX } from "preact";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";

/** What is wrong with, or asked about, one field, in words. */
export interface Problem {
  readonly severity: "error" | "warning";
  readonly message: string;
  readonly expected: string;
  /** The words are English on a page in another language. */
  readonly isEnglish?: boolean;
  /** Readings that the text may have meant, to be taken with one press. */
  readonly fixes?: readonly string[];
}

interface ProblemLineProps {
  readonly id?: string;
  readonly problem: Problem;
  readonly words: Words["parts"];
  readonly onFix?: (text: string) => void;
}

/** One problem, with buttons for what may have been meant. */
export function ProblemLine({ id, problem, words, onFix }: ProblemLineProps): JSX.Element {
  const { severity, message, expected, fixes, isEnglish } = problem;
  return (
    <div>
      <p id={id} class={`problem ${severity}`}>
        <strong>{severity === "error" ? words.problem : words.warning}:</strong>{" "}
        <span lang={isEnglish === true ? "en" : undefined}>
          {message}. {fill(words.expected, { expected })}
        </span>
      </p>
      {fixes === undefined || onFix === undefined ? null : (
        <div class="fixes">
          {fixes.map((fix) => (
            <button key={fix} type="button" class="quiet small" onClick={() => onFix(fix)}>
              {fill(words.readAs, { length: fix })}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
