import type { ComponentChildren, JSX } from "preact";
import { useCallback, useEffect, useMemo, useRef } from "preact/hooks";
import type { Lang } from "../layouts/languages.ts";
import { ChartField } from "../parts/chart-field.tsx";
import { ChoiceField } from "../parts/choice-field.tsx";
import { LengthField } from "../parts/length-field.tsx";
import { lengthText } from "../parts/lengths.ts";
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
import type { AverageAnswer, AverageIssue, AverageQuestion, NamedSize } from "../work/average-answer.ts";
import {
  type AverageState,
  averageKeys,
  emptyAverage,
  type LessonDimension,
  MOST_CLASS_READINGS,
  MOST_TAKEN,
} from "../work/average-state.ts";
import { writeFragment } from "../work/fragment.ts";
import { PathFigure, SpreadFigure, WrongFigure } from "./average-figures.tsx";
import { noticeAverage, tookText } from "./average-words.ts";

/** A chart of the shelf, cut down to what the lesson needs. */
export interface LessonChart {
  readonly id: string;
  readonly name: string;
  readonly sizes: Readonly<Record<LessonDimension, readonly NamedSize[]>>;
}

interface AverageProps {
  readonly lang: Lang;
  readonly words: Words["average"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly messages?: Messages;
  readonly shelf: readonly LessonChart[];
  readonly start: AverageState;
  readonly first: AverageAnswer;
}

/** More problems of pasted readings than these bury the others. */
const MOST_TOLD = 6;

function createWorker(): Worker {
  return new Worker(new URL("../workers/average.ts", import.meta.url), { type: "module" });
}

/** The page that shows what averaging does. */
export function Average(props: AverageProps): JSX.Element {
  const { lang, words, parts, dimensions, messages, shelf, start, first } = props;
  const keys = useMemo(() => averageKeys(shelf.map(({ id }) => id)), [shelf]);
  const { state, change, problems, ready, tooLong } = useFragment({
    start,
    empty: emptyAverage,
    keys,
    words: parts,
  });
  const pasted = useChart(state.chart === "" ? state.pasted : "", words.packOwn);
  const { answer, isBusy, failure, ask } = useWorker<AverageQuestion, AverageAnswer>(createWorker, first);
  const voice: Voice = { lang, unit: state.unit, messages };

  const sizes = useMemo<readonly NamedSize[]>(() => {
    if (state.chart !== "") return shelf.find(({ id }) => id === state.chart)?.sizes[state.dimension] ?? [];
    return (pasted.chart?.sizes ?? []).flatMap(({ name, ranges }) => {
      const interval = ranges[state.dimension]?.interval;
      return interval === undefined || !(interval.from < interval.to)
        ? []
        : [{ name, from: interval.from, to: interval.to }];
    });
  }, [state.chart, state.dimension, shelf, pasted.chart]);
  // How lengths are shown, and how large, changes nothing that is worked out.
  const { unit, isLarge } = state;
  const begun = useRef(false);
  const question = useMemo<AverageQuestion>(
    () => ({ state: { ...state, unit: "cm", isLarge: false }, sizes }),
    [JSON.stringify({ ...state, unit: "cm", isLarge: false }), sizes],
  );
  useEffect(() => {
    if (!ready || (!begun.current && state === start)) return;
    begun.current = true;
    ask(question, 120);
  }, [ready, question, ask, state, start]);
  useEffect(() => {
    document.documentElement.classList.toggle("wall", isLarge);
    return () => document.documentElement.classList.remove("wall");
  }, [isLarge]);

  const set = useCallback(
    <Name extends keyof AverageState>(
      name: Name,
      value: AverageState[Name],
      kind: "typing" | "step" = "step",
    ) => change((old) => ({ ...old, [name]: value }), kind),
    [change],
  );
  const take = (more: number) =>
    change((old) => ({ ...old, taken: Math.min(MOST_TAKEN, old.taken + more) }), "typing");
  const problemsOf = (field: string): readonly Problem[] =>
    answer.issues.filter((issue) => issue.field === field).map((issue) => sayProblem(issue, words, voice));

  const shown = useLater(answer, 0);
  const shownUnit = useLater(unit, 0);
  const figures = useMemo(
    () => <Figures answer={shown} unit={shownUnit} {...{ words, parts, lang }} />,
    [shown, shownUnit, words, parts, lang],
  );
  const notices = useMemo(
    () => noticeAverage(shown, words, lang, shownUnit),
    [shown, words, lang, shownUnit],
  );
  const isClass = state.source === "class";
  const field = (name: "length" | "bias" | "lasting" | "noise" | "step" | "slipSize" | "held") => ({
    id: name,
    value: state[name],
    problems: problemsOf(name),
    words: parts,
    onInput: (text: string) => set(name, text, "typing"),
  });

  return (
    <>
      <LinkProblems problems={problems} words={parts} />
      <div class="row screen-only toolbar">
        <UnitSwitch unit={unit} words={parts} onChange={(value) => set("unit", value)} />
        <div class="row">
          <label class="tick">
            <input
              type="checkbox"
              checked={isLarge}
              onChange={(event) => set("isLarge", event.currentTarget.checked)}
            />
            {words.wall}
          </label>
          {state === start ? null : (
            <button type="button" class="quiet" onClick={() => change(start, "step")}>
              {words.toExample}
            </button>
          )}
        </div>
      </div>
      {state === start ? <p class="note screen-only">{words.example}</p> : null}
      <div class="bench">
        <form class="screen-only" onSubmit={(event) => event.preventDefault()} noValidate>
          <section class="panel" aria-labelledby="set-title">
            <h2 id="set-title" class="ruled">
              {words.setTitle}
            </h2>
            <ChoiceField
              name="source"
              legend={words.source}
              value={state.source}
              choices={[
                ["drawn", words.sourceDrawn],
                ["class", words.sourceClass],
              ]}
              onChange={(value) => set("source", value)}
            />
            <ChoiceField
              name="dimension"
              legend={words.dimension}
              value={state.dimension}
              choices={[
                ["torso-length", dimensions["torso-length"]],
                ["hip-belt-girth", dimensions["hip-belt-girth"]],
              ]}
              onChange={(value) => set("dimension", value)}
            />
            {isClass ? (
              <>
                <Readings
                  value={state.readings}
                  issues={answer.issues.filter((issue) => issue.field === "readings")}
                  {...{ words, parts, voice }}
                  onInput={(text) => set("readings", text, "typing")}
                />
                <LengthField {...field("held")} label={words.held} hint={words.heldHint} />
              </>
            ) : (
              <>
                <LengthField {...field("length")} label={words.length} hint={words.lengthHint} />
                <ChoiceField
                  name="hands"
                  legend={words.hands}
                  value={state.hands}
                  choices={[
                    ["helper", words.handsHelper],
                    ["self", words.handsSelf],
                    ["own", words.handsOwn],
                  ]}
                  onChange={(value) => set("hands", value)}
                />
                {state.hands === "own" ? (
                  <>
                    <LengthField {...field("bias")} label={words.bias} hint={words.biasHint} />
                    <LengthField {...field("lasting")} label={words.lasting} hint={words.lastingHint} />
                    <LengthField {...field("noise")} label={words.noise} hint={words.noiseHint} />
                  </>
                ) : (
                  <>
                    <p class="hint">{words.handsHint}</p>
                    <ChoiceField
                      name="tool"
                      legend={words.tool}
                      value={state.tool}
                      choices={[
                        ["tape", words.tape],
                        ["cord-and-ruler", words.cord],
                        ["short-rule", words.rule],
                      ]}
                      onChange={(value) => set("tool", value)}
                    />
                  </>
                )}
                <LengthField {...field("step")} label={words.step} hint={words.stepHint} />
                <ChoiceField
                  name="slips"
                  legend={words.slips}
                  value={state.slips}
                  choices={[
                    ["none", words.slipsNone],
                    ["some", words.slipsSome],
                    ["own", words.slipsOwn],
                  ]}
                  onChange={(value) => set("slips", value)}
                />
                {state.slips === "own" ? (
                  <>
                    <LengthField
                      id="slipChance"
                      label={words.slipChance}
                      value={state.slipChance}
                      problems={problemsOf("slipChance")}
                      words={parts}
                      onInput={(text) => set("slipChance", text, "typing")}
                    />
                    <LengthField {...field("slipSize")} label={words.slipSize} />
                    <ChoiceField
                      name="side"
                      legend={words.slipSide}
                      value={state.slipSide}
                      choices={[
                        ["either", words.either],
                        ["longer", words.longer],
                        ["shorter", words.shorter],
                      ]}
                      onChange={(value) => set("slipSide", value)}
                    />
                  </>
                ) : null}
              </>
            )}
            <div class="field">
              <label class="label" for="pack">
                {words.pack}
              </label>
              <select
                id="pack"
                value={state.chart}
                onChange={(event) => set("chart", event.currentTarget.value)}
              >
                {shelf.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
                <option value="">{words.packOwn}</option>
              </select>
            </div>
            {state.chart === "" ? (
              <ChartField
                id="pasted"
                label={words.pasteLabel}
                hint={words.pasteHint}
                value={state.pasted}
                isWrong={pasted.wrong > 0}
                describedBy="pasted-told"
                onInput={(text) => set("pasted", text, "typing")}
                onReplace={(text) => set("pasted", text, "step")}
              />
            ) : null}
            <div id="pasted-told" aria-live="polite">
              {state.chart === "" && pasted.wrong > 0 ? (
                <ProblemLine
                  problem={{ severity: "error", message: words.errors.pack, expected: words.expected.pack }}
                  words={parts}
                />
              ) : null}
              {sizes.length === 0 && (state.chart !== "" || pasted.chart !== undefined) ? (
                <p class="hint">{words.noSizes}</p>
              ) : null}
            </div>
            <LinkRow words={parts} tooLong={tooLong} fragment={() => writeFragment(state, keys)} />
          </section>
        </form>
        <div aria-busy={isBusy}>
          {failure === undefined ? null : (
            <p class="note error" role="alert">
              {fill(parts.failed, { reason: failure })}
            </p>
          )}
          <Panel id="take" title={words.takeTitle}>
            <div class="take">
              <output aria-live="polite">{statusOf(answer, words, lang, unit)}</output>
              {isClass ? null : (
                <>
                  <Take most={state.taken >= MOST_TAKEN} onTake={() => take(1)} label={words.takeOne} />
                  <Take most={state.taken >= MOST_TAKEN} onTake={() => take(10)} label={words.takeTen} />
                  <Take most={state.taken >= MOST_TAKEN} onTake={() => take(1000)} label={words.takeMany} />
                  <button type="button" class="quiet screen-only" onClick={() => set("taken", 1)}>
                    {words.again}
                  </button>
                  <button
                    type="button"
                    class="quiet screen-only"
                    title={words.anotherHint}
                    onClick={() =>
                      change((old) => ({ ...old, seed: (old.seed + 1) % 1_000_000_000 }), "step")
                    }
                  >
                    {words.another}
                  </button>
                </>
              )}
            </div>
            {state.taken >= MOST_TAKEN && !isClass ? <p class="hint">{words.most}</p> : null}
          </Panel>
          {notices.length === 0 ? null : (
            <Panel id="notice" title={words.noticeTitle}>
              <ul class="notice">
                {notices.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </Panel>
          )}
          {figures}
        </div>
      </div>
    </>
  );
}

function Panel(props: {
  readonly id: string;
  readonly title: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <section class="panel" aria-labelledby={`${props.id}-title`}>
      <h2 id={`${props.id}-title`} class="ruled">
        {props.title}
      </h2>
      {props.children}
    </section>
  );
}

function Take(props: {
  readonly most: boolean;
  readonly onTake: () => void;
  readonly label: string;
}): JSX.Element {
  // Stays where the focus is when there is no more to take: a disabled button would lose it.
  return (
    <button type="button" class="screen-only" aria-disabled={props.most} onClick={props.onTake}>
      {props.label}
    </button>
  );
}

function statusOf(
  answer: AverageAnswer,
  words: Words["average"],
  lang: Lang,
  unit: AverageState["unit"],
): string {
  const { series } = answer;
  if (series === undefined) return "–";
  const status = fill(words.status, {
    taken: tookText(series.count, words),
    mean: lengthText(series.last.meanMm, unit, lang),
  });
  return series.slips === 0 ? status : status + fill(words.statusSlips, { slips: series.slips });
}

interface FiguresProps {
  readonly answer: AverageAnswer;
  readonly words: Words["average"];
  readonly parts: Words["parts"];
  readonly lang: Lang;
  readonly unit: AverageState["unit"];
}

function Figures(props: FiguresProps): JSX.Element | null {
  const { series } = props.answer;
  if (series === undefined) return null;
  return (
    <section class="panel lesson-figures">
      <PathFigure {...props} series={series} />
      <SpreadFigure {...props} />
      <WrongFigure {...props} />
    </section>
  );
}

function sayProblem(issue: AverageIssue, words: Words["average"], voice: Voice): Problem {
  if (issue.issue !== undefined) return sayIssue(issue.issue, voice);
  const code = issue.code ?? "far";
  return {
    severity: code === "many" ? "warning" : "error",
    message: fill(words.errors[code], { most: MOST_CLASS_READINGS }),
    expected: words.expected[code],
  };
}

interface ReadingsProps {
  readonly value: string;
  readonly issues: readonly AverageIssue[];
  readonly words: Words["average"];
  readonly parts: Words["parts"];
  readonly voice: Voice;
  readonly onInput: (text: string) => void;
}

function Readings({ value, issues, words, parts, voice, onInput }: ReadingsProps): JSX.Element {
  // Before anything is written there is nothing to object to.
  const told = value.trim() === "" ? [] : issues;
  return (
    <div class="field">
      <label class="label" for="readings">
        {words.readings}
      </label>
      <p id="readings-hint" class="hint">
        {words.readingsHint}
      </p>
      <textarea
        id="readings"
        value={value}
        rows={8}
        placeholder={words.readingsExample}
        spellcheck={false}
        autocomplete="off"
        aria-invalid={told.length > 0}
        aria-describedby="readings-hint readings-told"
        onInput={(event) => onInput(event.currentTarget.value)}
      />
      <div id="readings-told" aria-live="polite">
        {told.slice(0, MOST_TOLD).map((issue, index) => (
          <div key={`${issue.line} ${index}`}>
            {issue.line === undefined ? null : <strong>{fill(words.atLine, { line: issue.line })}</strong>}
            <ProblemLine problem={sayProblem(issue, words, voice)} words={parts} />
          </div>
        ))}
        {told.length > MOST_TOLD ? (
          <p class="hint">{fill(words.moreProblems, { count: told.length - MOST_TOLD })}</p>
        ) : null}
      </div>
    </div>
  );
}
