import type { JSX } from "preact";
import type { Words } from "../words/index.ts";

interface LinkProblemsProps {
  readonly problems: readonly string[];
  readonly words: Words["parts"];
}

/** What of the opened link could not be used. */
export function LinkProblems({ problems, words }: LinkProblemsProps): JSX.Element | null {
  if (problems.length === 0) return null;
  return (
    <div class="note warning screen-only" role="alert">
      <p>{words.linkProblems}</p>
      <ul>
        {problems.slice(0, 12).map((problem) => (
          <li key={problem}>{problem}</li>
        ))}
      </ul>
    </div>
  );
}
