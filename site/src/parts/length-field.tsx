import type { JSX } from "preact";
import type { Words } from "../words/index.ts";
import { type Problem, ProblemLine } from "./problem.tsx";

interface LengthFieldProps {
  readonly id: string;
  readonly label: string;
  /** Whether the label is only heard, because the head of its group shows it. */
  readonly isLabelHidden?: boolean;
  readonly hint?: string;
  readonly value: string;
  readonly problems: readonly Problem[];
  readonly words: Words["parts"];
  readonly onInput: (text: string) => void;
  /** Several lengths that were pasted at once, one a line or parted by semicolons. */
  readonly onPasteMany?: (texts: readonly string[]) => void;
}

/** A field for a length as it is written down, unit and all. What is wrong with it stands right below. */
export function LengthField(props: LengthFieldProps): JSX.Element {
  const { id, label, isLabelHidden, hint, value, problems, words, onInput, onPasteMany } = props;
  const describedBy = [
    ...(hint === undefined ? [] : [`${id}-hint`]),
    ...problems.map((_, index) => `${id}-problem-${index}`),
  ].join(" ");
  const isWrong = problems.some(({ severity }) => severity === "error");
  return (
    <div class="field">
      <label class={isLabelHidden === true ? "unseen" : "label"} for={id}>
        {label}
      </label>
      {hint === undefined ? null : (
        <p id={`${id}-hint`} class="hint">
          {hint}
        </p>
      )}
      <input
        id={id}
        type="text"
        inputMode="text"
        autocomplete="off"
        autocapitalize="none"
        spellcheck={false}
        maxLength={80}
        value={value}
        aria-invalid={isWrong}
        aria-describedby={describedBy === "" ? undefined : describedBy}
        onInput={(event) => onInput(event.currentTarget.value)}
        onPaste={(event) => {
          const texts = splitLengths(event.clipboardData?.getData("text/plain") ?? "");
          if (texts.length < 2 || onPasteMany === undefined) return;
          event.preventDefault();
          onPasteMany(texts);
        }}
      />
      {problems.map((problem, index) => (
        <ProblemLine
          key={problem.message}
          id={`${id}-problem-${index}`}
          problem={problem}
          words={words}
          onFix={onInput}
        />
      ))}
    </div>
  );
}

/** Lengths of a pasted text: one a line, or parted by semicolons or tabs. A comma may be a decimal mark. */
function splitLengths(text: string): readonly string[] {
  return text
    .slice(0, 2000)
    .split(/[\r\n;\t]+/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
}
