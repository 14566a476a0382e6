import type { ComponentChildren, JSX } from "preact";
import { useCallback, useEffect, useMemo, useRef } from "preact/hooks";
import type { charts } from "tapewise";
import type { Lang } from "../layouts/languages.ts";
import { ChartField } from "../parts/chart-field.tsx";
import { ChoiceField } from "../parts/choice-field.tsx";
import { LengthField } from "../parts/length-field.tsx";
import { LinkProblems } from "../parts/link-problems.tsx";
import { LinkRow } from "../parts/link-row.tsx";
import { percentText } from "../parts/percent.ts";
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
import { type ChooseAnswer, type ChooseQuestion, readingField } from "../work/choose-answer.ts";
import {
  type ChooseState,
  chooseKeys,
  emptyState,
  MOST_READINGS,
  type ReadDimension,
  readDimensions,
} from "../work/choose-state.ts";
import { writeFragment } from "../work/fragment.ts";
import { ChooseAnswerView, takeWords } from "./choose-answer-view.tsx";
import { ChooseCard } from "./choose-card.tsx";

/** A chart of the shelf. */
export interface ShelfChart {
  readonly id: string;
  readonly chart: charts.SizeChart;
}

interface ChooseProps {
  readonly lang: Lang;
  readonly words: Words["choose"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly messages?: Messages;
  readonly shelf: readonly ShelfChart[];
  /** The example: its entries, and its answer worked out beforehand. */
  readonly start: ChooseState;
  readonly first: ChooseAnswer;
  /** Address of the page that looks charts over. */
  readonly readAddress: string;
  /** How to take each dimension, rendered beforehand. */
  readonly guideTorso?: ComponentChildren;
  readonly guideBelt?: ComponentChildren;
  readonly guideHip?: ComponentChildren;
}

function createWorker(): Worker {
  return new Worker(new URL("../workers/choose.ts", import.meta.url), { type: "module" });
}

/** The page that chooses a size. */
export function Choose(props: ChooseProps): JSX.Element {
  const { lang, words, parts, dimensions, messages, shelf, start, first, readAddress } = props;
  const keys = useMemo(() => chooseKeys(shelf.map(({ id }) => id)), [shelf]);
  const { state, change, problems, ready, tooLong } = useFragment({
    start,
    empty: emptyState,
    keys,
    words: parts,
  });
  const pasted = useChart(state.pasted, words.pasteName, { create: createWorker });
  const { answer, isBusy, failure, ask } = useWorker<ChooseQuestion, ChooseAnswer>(createWorker, first);
  const voice: Voice = { lang, unit: state.unit, messages };

  const ticked = useMemo(
    () => [
      ...shelf.filter(({ id }) => state.shelf.includes(id)).map(({ chart }) => chart),
      ...(pasted.chart === undefined ? [] : [pasted.chart]),
    ],
    [shelf, state.shelf, pasted.chart],
  );
  // The example's answer is there already; only what differs from it is asked.
  const asked = useRef<unknown>(undefined);
  const question = useMemo<ChooseQuestion>(() => ({ state, charts: ticked }), [state, ticked]);
  useEffect(() => {
    if (!ready) return;
    if (asked.current === undefined && state === start && pasted.chart === undefined) return;
    asked.current = question;
    ask(question, 120);
  }, [ready, question, ask, state, start, pasted.chart]);

  const set = useCallback(
    <Name extends keyof ChooseState>(
      name: Name,
      value: ChooseState[Name],
      kind: "typing" | "step" = "step",
    ) => change((old) => ({ ...old, [name]: value }), kind),
    [change],
  );
  const setReadings = (dimension: ReadDimension, texts: readonly string[], kind: "typing" | "step") =>
    change((old) => ({ ...old, readings: { ...old.readings, [dimension]: texts } }), kind);

  const problemsOf = (field: string): readonly Problem[] =>
    answer.issues.filter((entry) => entry.field === field).map(({ issue }) => sayIssue(issue, voice));
  const guides: Readonly<Record<ReadDimension, ComponentChildren>> = {
    "torso-length": props.guideTorso,
    "hip-belt-girth": props.guideBelt,
    "hip-girth": props.guideHip,
  };
  // Neither is drawn anew for a key that is pressed, and each in a task of its own for an answer that comes: first
  // the form with what is wrong in it, then the answer, then the card.
  const told = useLater(answer, 20);
  const shownAnswer = useMemo(
    () => (
      <ChooseAnswerView
        {...{ words, parts, dimensions }}
        answer={told}
        voice={{ lang, unit: told.unit, messages }}
      />
    ),
    [told, words, parts, dimensions, lang, messages],
  );
  const printed = useLater(answer, 220);
  const card = useMemo(
    () => (
      <ChooseCard
        {...{ words, parts, dimensions }}
        answer={printed}
        voice={{ lang, unit: printed.unit, messages }}
      />
    ),
    [printed, words, parts, dimensions, lang, messages],
  );
  const best = answer.packs[0]?.recommendation;
  const isExample = state === start;
  const shown = readDimensions.filter((dimension) => state.readings[dimension].length > 0);
  const hidden = readDimensions.filter((dimension) => state.readings[dimension].length === 0);

  return (
    <>
      <LinkProblems problems={problems} words={parts} />
      <div class="row screen-only toolbar">
        <UnitSwitch unit={state.unit} words={parts} onChange={(unit) => set("unit", unit)} />
        {isExample ? (
          <button
            type="button"
            class="quiet"
            onClick={() => change({ ...emptyState, unit: state.unit, shelf: state.shelf }, "step")}
          >
            {words.begin}
          </button>
        ) : (
          <button type="button" class="quiet" onClick={() => change(start, "step")}>
            {words.showExample}
          </button>
        )}
      </div>
      {isExample ? <p class="note screen-only">{words.example}</p> : null}
      <div class="bench">
        <form class="not-content screen-only" onSubmit={(event) => event.preventDefault()} noValidate>
          <section class="panel" aria-labelledby="readings-title">
            <h2 id="readings-title" class="ruled">
              {words.readingsTitle}
            </h2>
            <p class="hint">{words.readingsHint}</p>
            {shown.map((dimension) => (
              <ReadingFields
                key={dimension}
                dimension={dimension}
                name={dimensions[dimension]}
                texts={state.readings[dimension]}
                problemsOf={problemsOf}
                words={words}
                parts={parts}
                onChange={(texts, kind) => setReadings(dimension, texts, kind)}
              >
                {guides[dimension]}
              </ReadingFields>
            ))}
            {hidden.map((dimension) => (
              <button
                key={dimension}
                type="button"
                class="quiet small"
                onClick={() => setReadings(dimension, ["", "", ""], "typing")}
              >
                {words.moreDimensions}: {dimensions[dimension]}
              </button>
            ))}
          </section>

          <section class="panel" aria-labelledby="how-title">
            <h2 id="how-title" class="ruled">
              {words.howTitle}
            </h2>
            <ChoiceField
              name="by"
              legend={words.by}
              value={state.measuredBy}
              choices={[
                ["", words.notSaid],
                ["self", words.bySelf],
                ["helper", words.byHelper],
              ]}
              onChange={(value) => set("measuredBy", value)}
            />
            <ChoiceField
              name="tool"
              legend={words.tool}
              value={state.tool}
              choices={[
                ["", words.notSaid],
                ["tape", words.tape],
                ["cord-and-ruler", words.cord],
                ["short-rule", words.rule],
              ]}
              onChange={(value) => set("tool", value)}
            />
            {state.tool === "short-rule" ? (
              <LengthField
                id="ruleLength"
                label={words.ruleLength}
                value={state.ruleLength}
                problems={problemsOf("ruleLength")}
                words={parts}
                onInput={(text) => set("ruleLength", text, "typing")}
              />
            ) : null}
            <ChoiceField
              name="afresh"
              legend={words.afresh}
              value={state.afresh}
              choices={[
                ["", words.notSaid],
                ["yes", words.yes],
                ["no", words.no],
              ]}
              onChange={(value) => set("afresh", value)}
            />
          </section>

          <section class="panel" aria-labelledby="about-title">
            <h2 id="about-title" class="ruled">
              {words.aboutTitle}
            </h2>
            <p class="hint">{words.aboutHint}</p>
            <ChoiceField
              name="cut"
              legend={words.cut}
              value={state.cut}
              choices={[
                ["", words.notSaid],
                ["women", words.women],
                ["men", words.men],
              ]}
              onChange={(value) => set("cut", value)}
            />
            <LengthField
              id="stature"
              label={words.stature}
              hint={words.statureHint}
              value={state.stature}
              problems={problemsOf("stature")}
              words={parts}
              onInput={(text) => set("stature", text, "typing")}
            />
            <Tick
              label={words.prior}
              checked={state.isPriorLeftOut}
              onChange={(value) => set("isPriorLeftOut", value)}
            />
            <fieldset>
              <legend>{words.build}</legend>
              {(
                [
                  ["broad-shoulders", words.broad],
                  ["large-chest", words.chest],
                  ["muscular-back", words.back],
                ] as const
              ).map(([feature, label]) => (
                <Tick
                  key={feature}
                  label={label}
                  checked={state.build.includes(feature)}
                  onChange={(value) =>
                    set(
                      "build",
                      value ? [...state.build, feature] : state.build.filter((other) => other !== feature),
                    )
                  }
                />
              ))}
            </fieldset>
            <Tick
              label={words.firstPack}
              checked={state.isFirstPack}
              onChange={(value) => set("isFirstPack", value)}
            />
          </section>

          <section class="panel" aria-labelledby="packs-title">
            <h2 id="packs-title" class="ruled">
              {words.packsTitle}
            </h2>
            <p class="hint">{words.packsHint}</p>
            <fieldset>
              <legend>{words.shelf}</legend>
              {shelf.map(({ id, chart }) => (
                <Tick
                  key={id}
                  label={chart.chart}
                  checked={state.shelf.includes(id)}
                  onChange={(value) =>
                    set("shelf", value ? [...state.shelf, id] : state.shelf.filter((other) => other !== id))
                  }
                />
              ))}
            </fieldset>
            <details open={state.pasted !== ""}>
              <summary>{words.paste}</summary>
              <ChartField
                id="pasted"
                label={words.pasteLabel}
                hint={words.pasteHint}
                placeholder={words.pasteExample}
                value={state.pasted}
                isWrong={pasted.wrong > 0}
                describedBy="pasted-told"
                onInput={(text) => set("pasted", text, "typing")}
                onReplace={(text) => set("pasted", text, "step")}
              />
              <div id="pasted-told" aria-live="polite">
                {pasted.chart === undefined ? null : (
                  <p class="hint">
                    {fill(words.pasteRead, {
                      sizes: pasted.sizes,
                      chart: pasted.chart.chart,
                    })}
                  </p>
                )}
                {pasted.told.slice(0, 5).map(({ issue, line }, index) => (
                  <ProblemLine
                    key={`${issue.code} ${index}`}
                    problem={atLine(sayIssue(issue, voice), line, parts)}
                    words={parts}
                  />
                ))}
              </div>
              {state.pasted === "" ? null : (
                <p>
                  <a href={`${readAddress}#${writeFragment(state.pasted, pastedKeys)}`}>{words.pasteLook}</a>
                </p>
              )}
            </details>
          </section>

          <section class="panel" aria-labelledby="share-title">
            <h2 id="share-title" class="ruled">
              {words.shareTitle}
            </h2>
            <p class="hint">{words.shareHint}</p>
            <LinkRow words={parts} tooLong={tooLong} fragment={() => writeFragment(state, keys)} />
          </section>
          {best === undefined ? null : (
            <div class="strip">
              <span>
                <strong>{fill(takeWords(best.verdict, words), { size: best.pick })}</strong>{" "}
                {fill(words.chance, { chance: percentText(best.probability) })}
              </span>
              <button
                type="button"
                class="small"
                onClick={() => document.getElementById("answer-title")?.focus()}
              >
                {words.seeWhy}
              </button>
            </div>
          )}
        </form>

        <section
          aria-labelledby="answer-title"
          aria-busy={isBusy}
          class={answer.packs.length > 0 ? "answer screen-only" : "answer"}
        >
          <h2 id="answer-title" class="unseen" tabIndex={-1}>
            {words.answerTitle}
          </h2>
          {failure === undefined ? null : (
            <p class="note error" role="alert">
              {fill(parts.failed, { reason: failure })}
            </p>
          )}
          {shownAnswer}
        </section>
      </div>
      {card}
    </>
  );
}

const pastedKeys = {
  chart: { read: (value: string) => value, write: (value: string) => value },
};

function atLine(problem: Problem, line: number | undefined, parts: Words["parts"]): Problem {
  if (line === undefined) return problem;
  return { ...problem, message: `${fill(parts.line, { line })}: ${problem.message}` };
}

interface TickProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (value: boolean) => void;
}

function Tick({ label, checked, onChange }: TickProps): JSX.Element {
  return (
    <div>
      <label class="tick">
        <input
          type="checkbox"
          checked={checked}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
        {label}
      </label>
    </div>
  );
}

interface ReadingFieldsProps {
  readonly dimension: ReadDimension;
  readonly name: string;
  readonly texts: readonly string[];
  readonly problemsOf: (field: string) => readonly Problem[];
  readonly words: Words["choose"];
  readonly parts: Words["parts"];
  readonly children: ComponentChildren;
  readonly onChange: (texts: readonly string[], kind: "typing" | "step") => void;
}

/** The readings of one dimension, and beside them how to take it. */
function ReadingFields(props: ReadingFieldsProps): JSX.Element {
  const { dimension, name, texts, problemsOf, words, parts, children, onChange } = props;
  const about = problemsOf(`readings-${dimension}`);
  return (
    <fieldset
      class="dimension"
      aria-describedby={about.length === 0 ? undefined : `readings-${dimension}-problem`}
    >
      <legend class="capital">{name}</legend>
      <div class="readings">
        {texts.map((text, index) => (
          <LengthField
            key={index}
            id={readingField(dimension, index)}
            label={fill(words.reading, { dimension: name, number: index + 1 })}
            isLabelHidden
            value={text}
            problems={problemsOf(readingField(dimension, index))}
            words={parts}
            onInput={(value) => onChange(texts.with(index, value), "typing")}
            onPasteMany={(many) => {
              const next = [...texts.slice(0, index), ...many, ...texts.slice(index + many.length)];
              onChange(next.slice(0, MOST_READINGS), "step");
            }}
          />
        ))}
        {texts.length < MOST_READINGS ? (
          <button type="button" class="quiet" onClick={() => onChange([...texts, ""], "typing")}>
            ＋ {words.addReading}
          </button>
        ) : null}
      </div>
      <div id={`readings-${dimension}-problem`}>
        {about.map((problem) => (
          <ProblemLine key={problem.message} problem={problem} words={parts} />
        ))}
      </div>
      {children === undefined ? null : (
        <details class="guide">
          <summary>{fill(words.guide, { dimension: name })}</summary>
          {children}
        </details>
      )}
    </fieldset>
  );
}
