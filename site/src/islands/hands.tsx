import type { JSX } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { Lang } from "../layouts/languages.ts";
import { lengthNumber, type ShownUnit, unitText } from "../parts/lengths.ts";
import { LinkProblems } from "../parts/link-problems.tsx";
import { LinkRow } from "../parts/link-row.tsx";
import { marksOf } from "../parts/marks-of.ts";
import { ProblemLine } from "../parts/problem.tsx";
import { sayIssue, type Voice } from "../parts/say.ts";
import { UnitSwitch } from "../parts/unit-switch.tsx";
import { useFragment } from "../parts/use-fragment.ts";
import { useLater } from "../parts/use-later.ts";
import { useWorker } from "../parts/use-worker.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { Messages } from "../words/messages.ts";
import { writeFragment } from "../work/fragment.ts";
import {
  type HandsAnswer,
  type HandsQuestion,
  type HandsTold,
  MOST_MEASURERS,
  MOST_READINGS,
  MOST_ROWS,
  MOST_TOLD,
} from "../work/hands-answer.ts";
import { bareUnits, emptyHands, type HandsState, handsDimensions, handsKeys } from "../work/hands-state.ts";
import { HandsErrors, HandsHabits, HandsPictures } from "./hands-report.tsx";
import { LineEditor, selectLine } from "./line-editor.tsx";

interface HandsProps {
  readonly lang: Lang;
  readonly words: Words["hands"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly messages?: Messages;
  readonly start: HandsState;
  readonly first: HandsAnswer;
}

function createWorker(): Worker {
  return new Worker(new URL("../workers/hands.ts", import.meta.url), { type: "module" });
}

/** The page that tells how well several people measure. */
export function Hands(props: HandsProps): JSX.Element {
  const { lang, words, parts, dimensions, messages, start, first } = props;
  const { state, change, problems, ready, tooLong } = useFragment({
    start,
    empty: emptyHands,
    keys: handsKeys,
    words: parts,
  });
  const { answer, isBusy, failure, ask } = useWorker<HandsQuestion, HandsAnswer>(createWorker, first);
  const { text, dimension, bare, unit } = state;
  const begun = useRef(false);
  useEffect(() => {
    const isStart = text === start.text && dimension === start.dimension && bare === start.bare;
    if (!ready || (!begun.current && isStart)) return;
    begun.current = true;
    ask({ text, dimension, bare }, 250);
  }, [ready, text, dimension, bare, ask, start]);

  const field = useRef<HTMLTextAreaElement>(null);
  const marks = useMemo(() => marksOf(answer.told), [answer.told]);
  const setText = (next: string, kind: "typing" | "step") => change((old) => ({ ...old, text: next }), kind);
  // What is shown of an answer is drawn in tasks of its own, so that typing is never held up.
  const read = useLater(answer, 0);
  const reported = useLater(answer, 60);
  const detailed = useLater(answer, 120);
  const finished = useLater(answer, 180);
  const shownUnit = useLater(unit, 0);
  const told = useMemo(() => {
    const voice: Voice = { lang, unit: "cm", messages };
    const go = (line: number) => {
      if (field.current !== null) selectLine(field.current, line);
    };
    return (
      <>
        <Told severity="error" title={words.wrongTitle} told={read.told} {...{ words, parts, voice, go }} />
        <Told severity="warning" title={words.oddTitle} told={read.told} {...{ words, parts, voice, go }} />
        {read.wrong + read.odd > MOST_TOLD ? (
          <p class="hint">{fill(words.more, { count: MOST_TOLD })}</p>
        ) : null}
      </>
    );
  }, [read, words, parts, lang, messages]);
  const grid = useMemo(
    () => <Grid answer={read} {...{ words, lang }} unit={shownUnit} />,
    [read, words, lang, shownUnit],
  );
  const report = useMemo(
    () =>
      reported.report === undefined ? null : (
        <HandsPictures
          answer={reported}
          report={reported.report}
          {...{ words, parts, lang }}
          unit={shownUnit}
        />
      ),
    [reported, words, parts, lang, shownUnit],
  );
  const figures = useMemo(
    () =>
      detailed.report === undefined ? null : (
        <HandsErrors
          answer={detailed}
          report={detailed.report}
          {...{ words, parts, lang }}
          unit={shownUnit}
        />
      ),
    [detailed, words, parts, lang, shownUnit],
  );
  const habits = useMemo(
    () =>
      finished.report === undefined ? null : (
        <HandsHabits
          answer={finished}
          report={finished.report}
          {...{ words, parts, lang }}
          unit={shownUnit}
        />
      ),
    [finished, words, parts, lang, shownUnit],
  );
  const download = () => {
    if (answer.json === undefined) return;
    const address = URL.createObjectURL(new Blob([answer.json], { type: "application/json" }));
    const link = document.createElement("a");
    link.href = address;
    link.download = `${words.fileName}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 1000);
  };
  const isEmpty = text.trim() === "";

  return (
    <>
      <LinkProblems problems={problems} words={parts} />
      <div class="row screen-only toolbar">
        <UnitSwitch
          unit={unit}
          words={parts}
          onChange={(value) => change((old) => ({ ...old, unit: value }), "step")}
        />
        <div class="row">
          {text === start.text ? null : (
            <button type="button" class="quiet" onClick={() => change({ ...start, unit }, "step")}>
              {words.begin}
            </button>
          )}
          <button type="button" class="quiet" onClick={() => setText("", "step")}>
            {words.clear}
          </button>
        </div>
      </div>
      {text === start.text ? <p class="note screen-only">{words.example}</p> : null}
      <div class="bench even">
        <div>
          <section class="panel screen-only" aria-labelledby="text-title">
            <h2 id="text-title" class="ruled">
              {words.textTitle}
            </h2>
            <LineEditor
              id="study-text"
              label={words.textLabel}
              hint={words.textHint}
              value={text}
              marks={marks}
              isWrong={answer.wrong > 0}
              field={field}
              onInput={(next) => setText(next, "typing")}
              onReplace={(next) => setText(next, "step")}
            />
            <div class="hands-options">
              <Select
                id="dimension"
                label={words.dimension}
                value={dimension}
                choices={[
                  ["", words.dimensionNone],
                  ...handsDimensions.map((id) => [id, dimensions[id]] as const),
                ]}
                onChange={(value) => change((old) => ({ ...old, dimension: value }), "step")}
              />
              <Select
                id="bare"
                label={words.bare}
                value={bare}
                choices={[
                  ["", words.bareNone],
                  ...bareUnits.map((id) => [id, id === "in" ? parts.in : id] as const),
                ]}
                onChange={(value) => change((old) => ({ ...old, bare: value }), "step")}
              />
            </div>
            <div id="study-text-told" aria-live="polite" aria-busy={isBusy}>
              {isEmpty ? null : (
                <p>
                  <strong>
                    {answer.wrong + answer.odd === 0
                      ? words.nothing
                      : fill(words.count, { wrong: answer.wrong, odd: answer.odd })}
                  </strong>
                </p>
              )}
            </div>
            {failure === undefined ? null : (
              <p class="note error" role="alert">
                {fill(parts.failed, { reason: failure })}
              </p>
            )}
            {told}
          </section>
          <section class="panel" aria-labelledby="read-title">
            <h2 id="read-title" class="ruled">
              {words.readTitle}
            </h2>
            {read.measurers.length === 0 ? <p>{isEmpty ? words.empty : words.unreadable}</p> : grid}
          </section>
          <section class="panel screen-only" aria-labelledby="take-title">
            <h2 id="take-title" class="ruled">
              {words.takeTitle}
            </h2>
            <p class="hint">{words.takeHint}</p>
            <div class="row">
              <button type="button" disabled={answer.json === undefined} onClick={download}>
                {words.download}
              </button>
              <button type="button" class="quiet" onClick={() => print()}>
                {words.print}
              </button>
            </div>
            <LinkRow words={parts} tooLong={tooLong} fragment={() => writeFragment(state, handsKeys)} />
          </section>
        </div>
        <div>
          {report}
          {figures}
          {habits}
          {answer.isTooMany ? (
            <p class="note warning">
              {fill(words.tooMany, { measurers: MOST_MEASURERS, readings: MOST_READINGS })}
            </p>
          ) : null}
        </div>
      </div>
    </>
  );
}

interface SelectProps<Value extends string> {
  readonly id: string;
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly (readonly [value: Value, label: string])[];
  readonly onChange: (value: Value) => void;
}

function Select<Value extends string>(props: SelectProps<Value>): JSX.Element {
  const { id, label, value, choices, onChange } = props;
  return (
    <div class="field">
      <label class="label" for={id}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const chosen = choices.find(([choice]) => choice === event.currentTarget.value);
          if (chosen !== undefined) onChange(chosen[0]);
        }}
      >
        {choices.map(([choice, text]) => (
          <option key={choice} value={choice}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

interface ToldProps {
  readonly severity: "error" | "warning";
  readonly title: string;
  readonly told: readonly HandsTold[];
  readonly words: Words["hands"];
  readonly parts: Words["parts"];
  readonly voice: Voice;
  readonly go: (line: number) => void;
}

function Told({ severity, title, told, words, parts, voice, go }: ToldProps): JSX.Element | null {
  const own = told.filter(({ issue }) => issue.severity === severity);
  if (own.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul class="told">
        {own.map(({ issue, line, column }, index) => (
          <li key={`${issue.code} ${line} ${index}`}>
            {line === undefined ? null : <Go {...{ line, column, words, go }} />}
            <ProblemLine problem={sayIssue(issue, voice)} words={parts} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface GoProps {
  readonly line: number;
  readonly column: number | undefined;
  readonly words: Words["hands"];
  readonly go: (line: number) => void;
}

/** Leads to a place in the text; what is seen of it is part of what is heard. */
function Go({ line, column, words, go }: GoProps): JSX.Element {
  const place = column === undefined ? String(line) : `${line}:${column}`;
  return (
    <button
      type="button"
      class="quiet small"
      aria-label={`${place}, ${fill(words.goLine, { line })}`}
      onClick={() => go(line)}
    >
      {place}
    </button>
  );
}

interface GridProps {
  readonly answer: HandsAnswer;
  readonly words: Words["hands"];
  readonly lang: Lang;
  readonly unit: ShownUnit;
}

/** What was read, cell by cell, with what is missing and what was set aside in its place. */
function Grid({ answer, words, lang, unit }: GridProps): JSX.Element {
  const { rows, measurers, report } = answer;
  const repeats = Math.round(
    (rows[0]?.cells.length ?? 0) / Math.max(1, Math.min(measurers.length, MOST_MEASURERS)),
  );
  const size = report?.size;
  const caption = fill(words.readCaption, { unit: unitText(unit, lang) });
  return (
    <>
      {size === undefined ? null : (
        <p data-size>
          {fill(words.counted, {
            readings: size.readings,
            subjects: size.subjects,
            measurers: size.measurers === 1 ? words.handOne : fill(words.handMany, { count: size.measurers }),
            repeats: size.repeats,
          })}{" "}
          {size.missing === 0 ? null : some(size.missing, words.missingOne, words.missingMany)}{" "}
          {size.setAside === 0 ? null : some(size.setAside, words.asideOne, words.asideMany)}
        </p>
      )}
      <section class="scroll" aria-label={caption} tabIndex={0}>
        <table data-grid>
          <caption>{caption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.person}</th>
              {measurers.slice(0, MOST_MEASURERS).flatMap((measurer) =>
                Array.from({ length: repeats }, (_, index) => (
                  <th key={`${measurer} ${index}`} scope="col" class="number">
                    {measurer} {repeats > 1 ? index + 1 : ""}
                  </th>
                )),
              )}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ subject, cells }) => (
              <tr key={subject}>
                <th scope="row">{subject}</th>
                {cells.map(({ mm, state, text }, index) => (
                  // Cells have no name but their place.
                  <td key={`${subject} ${index}`} class={`number cell-${state}`}>
                    {state === "set-aside" ? (
                      <del title={words.keyAside}>{text ?? ""}</del>
                    ) : mm === undefined ? (
                      "–"
                    ) : (
                      lengthNumber(mm, unit, lang)
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {size !== undefined && size.subjects > rows.length ? (
        <p class="hint">{fill(words.readMore, { most: MOST_ROWS, count: size.subjects })}</p>
      ) : null}
    </>
  );
}

function some(count: number, one: string, many: string): string {
  return count === 1 ? one : fill(many, { count });
}
