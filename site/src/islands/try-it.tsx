import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { ChoiceField } from "../parts/choice-field.tsx";
import { ProblemLine } from "../parts/problem.tsx";
import { sayIssue, type Voice } from "../parts/say.ts";
import { useWorker } from "../parts/use-worker.ts";
import type { ToldOfEntries, TryAnswer } from "../try-it/answer.ts";
import {
  type Entries,
  type ExampleField,
  type ExampleId,
  examples,
  type IssueSpot,
  startOf,
} from "../try-it/examples.ts";
import { workers } from "../try-it/workers.ts";
import type { DocsWords } from "../words/docs.ts";
import { fill } from "../words/fill.ts";

interface TryItProps {
  readonly id: ExampleId;
  readonly words: Omit<DocsWords["tryIt"], "examples">;
  readonly own: DocsWords["tryIt"]["examples"][ExampleId];
  readonly parts: DocsWords["parts"];
  /** The answer to the entries of the page, worked out while the site was built. */
  readonly first: TryAnswer;
  /** The address of the page of issue codes. */
  readonly codes: string;
}

/** Long enough that a word is typed to its end before it is answered. */
const PAUSE_MS = 250;
/** More than any example needs, and little enough for a page to stay quick. */
const LONGEST_ENTRY = 20_000;
/** The documentation is in English, and so are the library's own sentences. */
const VOICE: Voice = { lang: "en", unit: "cm", messages: undefined };

/** The arguments of an example, to be changed, and what its function returns for them. */
export function TryIt({ id, words, own, parts, first, codes }: TryItProps): JSX.Element {
  const { call, fields } = examples[id];
  const [entries, setEntries] = useState<Entries>(first.entries);
  const { answer, isBusy, failure, ask } = useWorker<Entries, TryAnswer>(workers[id], first);
  const enter = (next: Entries, pauseMs: number) => {
    setEntries(next);
    ask(next, pauseMs);
  };
  const title = fill(words.title, { call });
  const sentence = answer.reading === undefined ? undefined : own.sentences[answer.reading.sentence];
  return (
    // biome-ignore lint/a11y/useSemanticElements: the legend of a fieldset would be read before each of its fields.
    <div role="group" class="try" aria-label={title}>
      <p class="try-title" aria-hidden="true">
        {title}
      </p>
      <p class="hint">{words.hint}</p>
      {fields.map((field) => (
        <Entry
          key={field.name}
          id={`${id}-${field.name}`}
          field={field}
          own={own}
          value={entries[field.name] ?? ""}
          told={answer.told.filter(({ spot }) => spot.field === field.name)}
          {...{ words, parts, codes }}
          onEnter={(text, pauseMs = PAUSE_MS) => enter({ ...entries, [field.name]: text }, pauseMs)}
        />
      ))}
      <div class="try-answer" aria-live="polite" aria-busy={isBusy}>
        <p>
          <strong>
            {answer.reading === undefined || sentence === undefined
              ? words.noValue
              : fill(sentence, answer.reading.facts)}
          </strong>
        </p>
        {failure === undefined ? null : <p>{fill(parts.failed, { reason: failure })}</p>}
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: code that scrolls has to be reached by keyboard, and named. */}
      <pre role="group" tabIndex={0} aria-label={words.code}>
        <code>{`${answer.call}\n\n${answer.returned}`}</code>
      </pre>
      <button type="button" class="quiet" onClick={() => enter(startOf(id), 0)}>
        {words.reset}
      </button>
    </div>
  );
}

interface EntryProps extends Pick<TryItProps, "own" | "words" | "parts" | "codes"> {
  readonly id: string;
  readonly field: ExampleField;
  readonly value: string;
  readonly told: readonly ToldOfEntries[];
  readonly onEnter: (text: string, pauseMs?: number) => void;
}

function Entry({ id, field, own, value, told, words, parts, codes, onEnter }: EntryProps): JSX.Element {
  const { kind, name, choices = [] } = field;
  const { label, hint } = own.fields[name] ?? { label: name };
  if (kind === "choice") {
    return (
      <ChoiceField
        name={id}
        legend={label}
        value={value}
        choices={choices.map((choice) => [choice, choice] as const)}
        onChange={(choice) => onEnter(choice, 0)}
      />
    );
  }
  const common = {
    id,
    value,
    maxLength: LONGEST_ENTRY,
    autocomplete: "off",
    autocapitalize: "none",
    spellcheck: false,
    "aria-invalid": told.some(({ issue }) => issue.severity === "error"),
    "aria-describedby": `${hint === undefined ? "" : `${id}-hint `}${id}-told`,
  } as const;
  return (
    <div class="try-field">
      <label for={id}>{label}</label>
      {hint === undefined ? null : (
        <p id={`${id}-hint`} class="hint">
          {hint}
        </p>
      )}
      {kind === "text" ? (
        <input type="text" {...common} onInput={(event) => onEnter(event.currentTarget.value)} />
      ) : (
        <textarea
          {...common}
          rows={Math.min(8, Math.max(field.start.split("\n").length + 1, 3))}
          wrap="off"
          onInput={(event) => onEnter(event.currentTarget.value)}
        />
      )}
      <ul id={`${id}-told`} class="try-told" aria-live="polite">
        {told.map(({ issue, spot }, index) => {
          const problem = sayIssue(issue, VOICE);
          const where = whereText(spot, words);
          const mended = (text: string) => withEntry(value, field, spot, text);
          return (
            <li key={`${issue.code} ${issue.path.join(" ")} ${index}`}>
              {where === "" ? null : <span class="try-where">{where}</span>}
              <ProblemLine
                problem={mended("") === undefined ? { ...problem, fixes: [] } : problem}
                words={parts}
                onFix={(text) => onEnter(mended(text) ?? value, 0)}
              />
              <a href={`${codes}#${issue.code}`} aria-label={fill(words.explain, { code: issue.code })}>
                <code>{issue.code}</code>
              </a>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

function whereText({ entry, line }: IssueSpot, words: TryItProps["words"]): string {
  if (entry !== undefined) return fill(words.entry, { entry });
  return line === undefined ? "" : fill(words.line, { line });
}

/** A field with one of its lengths written anew; `undefined` where a length has no line of its own. */
function withEntry(value: string, { kind }: ExampleField, spot: IssueSpot, text: string): string | undefined {
  if (kind === "text") return text;
  if (kind !== "list" || spot.entry === undefined) return undefined;
  const lines = value.split("\n");
  const filled = lines.flatMap((line, index) => (line.trim() === "" ? [] : [index]));
  const at = filled[spot.entry - 1];
  return at === undefined ? undefined : lines.with(at, text).join("\n");
}
