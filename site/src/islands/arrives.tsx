import type { JSX } from "preact";
import { useCallback, useEffect, useMemo, useRef, useState } from "preact/hooks";
import { afterwards } from "tapewise";
import { BodyCheckDrawing } from "../drawings/body-check-drawing.tsx";
import type { Lang } from "../layouts/languages.ts";
import { ChartField } from "../parts/chart-field.tsx";
import { LengthField } from "../parts/length-field.tsx";
import { LinkProblems } from "../parts/link-problems.tsx";
import { LinkRow } from "../parts/link-row.tsx";
import { type Problem, ProblemLine } from "../parts/problem.tsx";
import { sayIssue, type Voice } from "../parts/say.ts";
import { UnitSwitch } from "../parts/unit-switch.tsx";
import { useChart } from "../parts/use-chart.ts";
import { useFragment } from "../parts/use-fragment.ts";
import { useLater } from "../parts/use-later.ts";
import { useWorker } from "../parts/use-worker.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { Messages } from "../words/messages.ts";
import type { ArrivesAnswer, ArrivesQuestion } from "../work/arrives-answer.ts";
import { type ArrivesState, arrivesKeys, emptyArrives } from "../work/arrives-state.ts";
import { readingField } from "../work/choose-answer.ts";
import type { ChooseState } from "../work/choose-state.ts";
import { chooseKeys, MOST_READINGS } from "../work/choose-state.ts";
import { writeFragment } from "../work/fragment.ts";
import { ArrivesCard, ArrivesRuler, Result, SeenList, SetupLine, writeStep } from "./arrives-view.tsx";
import type { ShelfChart } from "./choose.tsx";

interface ArrivesProps {
  readonly lang: Lang;
  readonly words: Words["arrives"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly messages?: Messages;
  /** The texts of the check, so that only those of one language come, and not as a script. */
  readonly texts: afterwards.BodyCheckTexts;
  readonly shelf: readonly ShelfChart[];
  readonly start: ArrivesState;
  readonly first: ArrivesAnswer;
  readonly chooseAddress: string;
}

const STEPS = afterwards.bodyCheckItems.length;
const READ = ["torso-length", "hip-belt-girth"] as const;

function createWorker(): Worker {
  return new Worker(new URL("../workers/arrives.ts", import.meta.url), { type: "module" });
}

/** The page that looks at a pack on the body. */
export function Arrives(props: ArrivesProps): JSX.Element {
  const { lang, words, parts, dimensions, messages, texts, shelf, start, first, chooseAddress } = props;
  const ids = useMemo(() => shelf.map(({ id }) => id), [shelf]);
  const keys = useMemo(() => arrivesKeys(ids), [ids]);
  const { state, change, problems, ready, tooLong } = useFragment({
    start,
    empty: emptyArrives,
    keys,
    words: parts,
  });
  const { choose } = state;
  const { unit } = choose;
  const pack = choose.shelf[0] ?? "";
  const own = pack === "" ? choose.pasted : "";
  const pasted = useChart(own, words.pasteName, { create: createWorker });
  const { answer, isBusy, failure, ask } = useWorker<ArrivesQuestion, ArrivesAnswer>(createWorker, first);
  const voice = useMemo<Voice>(() => ({ lang, unit, messages }), [lang, unit, messages]);
  const chart = shelf.find(({ id }) => id === pack)?.chart ?? (own.trim() === "" ? undefined : pasted.chart);
  // A text that is still being read is waited for, so that the step that is shown does not come and go.
  const isReading = own.trim() !== "" && pasted.text !== own && pasted.failure === undefined;
  const question = useMemo<ArrivesQuestion>(() => ({ state, chart }), [state, chart]);
  const isFirst = state === start;
  // The example's answer is there already; only what differs from it is asked.
  const asked = useRef(false);
  useEffect(() => {
    if (!ready || isReading || (!asked.current && isFirst)) return;
    asked.current = true;
    ask(question, 60);
  }, [ready, isReading, question, ask, isFirst]);

  // Another pack on the body begins the check anew.
  const setWorn = useCallback(
    (next: Partial<ArrivesState>, chosen: Partial<ChooseState> = {}) =>
      change(
        (old) => ({
          ...old,
          ...next,
          choose: { ...old.choose, ...chosen },
          seen: [],
          again: undefined,
        }),
        "step",
      ),
    [change],
  );
  const setChoose = (next: Partial<ChooseState>, kind: "typing" | "step") =>
    change((old) => ({ ...old, choose: { ...old.choose, ...next } }), kind);

  // What keeps the check from beginning can be mended here, and stays open while it is.
  const [isOpen, setOpen] = useState(false);
  const isBlocked = answer.blocked !== undefined;
  useEffect(() => {
    if (isBlocked) setOpen(true);
  }, [isBlocked]);

  const look = answer.looks.at(-1);
  const head = useRef<HTMLHeadingElement>(null);
  const wantsFocus = useRef(false);
  const stepKey = JSON.stringify([answer.looks.length, look?.used, look?.step.kind]);
  useEffect(() => {
    if (!wantsFocus.current || stepKey === "") return;
    wantsFocus.current = false;
    head.current?.focus();
  }, [stepKey]);
  const go = (next: (old: ArrivesState) => ArrivesState) => {
    wantsFocus.current = true;
    change(next, "step");
  };
  const give = (given: afterwards.GivenAnswer) =>
    go((old) => {
      const used = look?.used ?? 0;
      return old.again === undefined
        ? { ...old, seen: [...old.seen.slice(0, used), given] }
        : { ...old, again: [...old.again.slice(0, used), given] };
    });
  const back = () =>
    go((old) => {
      if (old.again === undefined) return { ...old, seen: old.seen.slice(0, -1) };
      return { ...old, again: old.again.length === 0 ? undefined : old.again.slice(0, -1) };
    });

  const problemsOf = (field: string): readonly Problem[] =>
    answer.issues.filter((entry) => entry.field === field).map(({ issue }) => sayIssue(issue, voice));
  const view = { answer, words, parts, dimensions, voice, texts };
  const later = useLater(answer, 60);
  const beside = useMemo(() => {
    const shown = {
      answer: later,
      words,
      parts,
      dimensions,
      voice,
      texts,
    };
    return (
      <>
        <ArrivesRuler {...shown} />
        <SeenList {...shown} />
      </>
    );
  }, [later, words, parts, dimensions, voice, texts]);
  const printed = useLater(answer, 140);
  const card = useMemo(
    () => <ArrivesCard {...{ words, parts, dimensions, voice, texts }} answer={printed} />,
    [printed, words, parts, dimensions, voice, texts],
  );
  const hasBegun = state.seen.length > 0;

  return (
    <div class="arrives">
      <LinkProblems problems={problems} words={parts} />
      <section class="note warning care" aria-labelledby="care-title">
        <h2 id="care-title">{words.careTitle}</h2>
        <ul>
          {words.care.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
      <section class="panel screen-only" aria-labelledby="setup-title">
        <h2 id="setup-title" class="ruled">
          {words.setupTitle}
        </h2>
        <SetupLine {...view} />
        <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{words.change}</summary>
          <form class="not-content" onSubmit={(event) => event.preventDefault()} noValidate>
            <UnitSwitch unit={unit} words={parts} onChange={(next) => setChoose({ unit: next }, "step")} />
            <div class="setup-fields below">
              <div class="field">
                <label class="label" for="pack">
                  {words.pack}
                </label>
                <select
                  id="pack"
                  value={pack}
                  onChange={(event) => {
                    const id = event.currentTarget.value;
                    setWorn({ size: "", belt: "" }, { shelf: id === "" ? [] : [id] });
                  }}
                >
                  {shelf.map(({ id, chart: { chart: name } }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                  <option value="">{words.ownPack}</option>
                </select>
              </div>
              <Names
                id="size"
                label={words.size}
                names={answer.chart?.sizes.map(({ name }) => name) ?? []}
                value={answer.size ?? ""}
                onChange={(size) => setWorn({ size })}
              />
              <Names
                id="belt"
                label={words.belt}
                names={answer.chart?.belts.map(({ name }) => name) ?? []}
                value={answer.belt ?? ""}
                onChange={(belt) => setWorn({ belt })}
              />
            </div>
            {pack === "" ? (
              <>
                <ChartField
                  id="pasted"
                  label={words.pasteLabel}
                  hint={words.pasteHint}
                  placeholder={words.pasteExample}
                  value={choose.pasted}
                  isWrong={pasted.wrong > 0}
                  describedBy="pasted-told"
                  onInput={(text) => setChoose({ pasted: text }, "typing")}
                  onReplace={(text) => setChoose({ pasted: text }, "step")}
                />
                <div id="pasted-told" aria-live="polite">
                  {pasted.chart === undefined ? null : (
                    <p class="hint">
                      {fill(words.pasteRead, { sizes: pasted.sizes, chart: pasted.chart.chart })}
                    </p>
                  )}
                  {pasted.told.slice(0, 5).map(({ issue }, index) => (
                    <ProblemLine
                      key={`${issue.code} ${index}`}
                      problem={sayIssue(issue, voice)}
                      words={parts}
                    />
                  ))}
                </div>
              </>
            ) : null}
            <fieldset class="below">
              <legend>{words.readings}</legend>
              <p class="hint">{words.readingsHint}</p>
              {READ.map((dimension) => (
                <div class="readings below" key={dimension}>
                  {choose.readings[dimension].map((text, index) => (
                    <LengthField
                      key={index}
                      id={readingField(dimension, index)}
                      label={fill(words.reading, { dimension: dimensions[dimension], number: index + 1 })}
                      value={text}
                      problems={problemsOf(readingField(dimension, index))}
                      words={parts}
                      onInput={(value) => {
                        const readings = {
                          ...choose.readings,
                          [dimension]: choose.readings[dimension].with(index, value).slice(0, MOST_READINGS),
                        };
                        setChoose({ readings }, "typing");
                      }}
                    />
                  ))}
                </div>
              ))}
            </fieldset>
            {tooLong === undefined ? (
              <p>
                <a href={`${chooseAddress}#${writeFragment(choose, chooseKeys(ids))}`}>{words.chooseFirst}</a>
              </p>
            ) : null}
          </form>
        </details>
      </section>
      {failure === undefined ? null : (
        <p class="note error" role="alert">
          {fill(parts.failed, { reason: failure })}
        </p>
      )}
      {answer.isCut ? (
        <p class="note warning screen-only" role="alert">
          {words.cut}
        </p>
      ) : null}
      <div class="bench check-bench screen-only">
        <section class="panel" aria-labelledby="check-title" aria-busy={isBusy}>
          <h2 id="check-title" class="ruled">
            {words.checkTitle}
          </h2>
          {look === undefined ? (
            <p>{words.blocked[answer.blocked ?? "chart"]}</p>
          ) : look.step.kind === "ask" ? (
            <Step
              key={stepKey}
              step={look.step}
              isSecond={answer.looks.length === 2}
              head={head}
              {...{ words, voice, texts }}
              onGive={give}
            />
          ) : (
            <>
              <Tape step={STEPS} label={words.resultTitle} />
              <Result {...view} head={head} />
              {look.step.kind === "adjust" ? (
                <button type="button" onClick={() => go((old) => ({ ...old, again: [] }))}>
                  {words.adjusted}
                </button>
              ) : null}
            </>
          )}
          {hasBegun ? (
            <div class="row below">
              <button type="button" class="quiet" onClick={back}>
                {words.back}
              </button>
              <button
                type="button"
                class="quiet"
                onClick={() => go((old) => ({ ...old, seen: [], again: undefined }))}
              >
                {words.restart}
              </button>
              {look !== undefined && look.step.kind !== "ask" ? (
                <button type="button" class="quiet" onClick={() => window.print()}>
                  {parts.print}
                </button>
              ) : null}
            </div>
          ) : null}
        </section>
        <div>
          {beside}
          <section class="panel" aria-labelledby="share-title">
            <h2 id="share-title" class="ruled">
              {words.shareTitle}
            </h2>
            <p class="hint">{words.shareHint}</p>
            <LinkRow words={parts} tooLong={tooLong} fragment={() => writeFragment(state, keys)} />
          </section>
        </div>
      </div>
      {card}
    </div>
  );
}

interface NamesProps {
  readonly id: string;
  readonly label: string;
  readonly names: readonly string[];
  readonly value: string;
  readonly onChange: (name: string) => void;
}

/** A choice among the names of sizes or belts; nothing where there are none. */
function Names({ id, label, names, value, onChange }: NamesProps): JSX.Element | null {
  if (names.length === 0) return null;
  return (
    <div class="field">
      <label class="label" for={id}>
        {label}
      </label>
      <select id={id} value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        {names.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}

/** The steps on a tape: what was answered lies behind the mark. */
function Tape({ step, label }: { readonly step: number; readonly label: string }): JSX.Element {
  const at = (index: number) => `${((index / STEPS) * 100).toFixed(2)}%`;
  return (
    <svg class="check-tape" height="34" role="img" aria-label={label}>
      <rect class="ruler-axis" x="0" y="8" width="100%" height="24" />
      <line class="ruler-edge" x1="0" x2="100%" y1="8" y2="8" />
      <rect class="check-done" x="0" y="2" width={at(step)} height="6" />
      {Array.from({ length: STEPS }, (_, index) => (
        <g key={index}>
          <line class="ruler-tick long" x1={at(index + 1)} x2={at(index + 1)} y1="8" y2="20" />
          <text class="ruler-number" x={at(index + 0.5)} y="26">
            {index + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}

interface StepProps {
  readonly step: Extract<afterwards.BodyCheckStep, { readonly kind: "ask" }>;
  readonly isSecond: boolean;
  readonly head: { current: HTMLHeadingElement | null };
  readonly words: Words["arrives"];
  readonly voice: Voice;
  readonly texts: afterwards.BodyCheckTexts;
  readonly onGive: (given: afterwards.GivenAnswer) => void;
}

/** One thing to look at: how, and the answers that there are. */
function Step({ step, isSecond, head, words, voice, texts, onGive }: StepProps): JSX.Element {
  const [chosen, setChosen] = useState("");
  const [isMissing, setMissing] = useState(false);
  const { sentences, choices } = writeStep(step, voice, texts);
  const [look = "", ...before] = sentences.toReversed();
  const place = afterwards.bodyCheckItems.findIndex(({ id }) => id === step.item);
  const said = fill(words.stepOf, { step: place + 1, count: STEPS });
  return (
    <form
      class="not-content"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (chosen === "") {
          setMissing(true);
          document.getElementById(`answer-${choices[0]?.id ?? ""}`)?.focus();
        } else onGive({ item: step.item, answer: chosen });
      }}
    >
      <Tape step={place} label={said} />
      <div class="check-step">
        <div>
          <p class="hint">
            {said}
            {isSecond ? `, ${words.lookTwo}` : ""}
          </p>
          <h3 ref={head} tabIndex={-1}>
            {words.items[step.item]}
          </h3>
          {before.map((sentence) => (
            <p key={sentence} class="note warning" role="status">
              <strong>{words.askedAgain}.</strong> {sentence}
            </p>
          ))}
          <fieldset aria-describedby={isMissing ? "answer-missing" : undefined}>
            <legend class="look">{look}</legend>
            <div class="choices">
              {choices.map(({ id, answer }) => (
                <label key={id}>
                  <input
                    type="radio"
                    id={`answer-${id}`}
                    name="answer"
                    value={id}
                    checked={chosen === id}
                    onChange={() => {
                      setChosen(id);
                      setMissing(false);
                    }}
                  />
                  {answer}
                </label>
              ))}
            </div>
            {isMissing ? (
              <p id="answer-missing" class="problem error" role="alert">
                <strong>{words.chooseOne}</strong>
              </p>
            ) : null}
          </fieldset>
          <button type="submit">{words.next}</button>
        </div>
        <BodyCheckDrawing item={step.item} words={words} />
      </div>
    </form>
  );
}
