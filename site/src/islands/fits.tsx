import type { JSX } from "preact";
import { useCallback, useEffect, useMemo, useRef } from "preact/hooks";
import type { Lang } from "../layouts/languages.ts";
import { ChartField } from "../parts/chart-field.tsx";
import { ChoiceField } from "../parts/choice-field.tsx";
import { LengthField } from "../parts/length-field.tsx";
import { lengthText } from "../parts/lengths.ts";
import { LinkProblems } from "../parts/link-problems.tsx";
import { LinkRow } from "../parts/link-row.tsx";
import { type Problem, ProblemLine } from "../parts/problem.tsx";
import { Ruler } from "../parts/ruler.tsx";
import { sayIssue, sayText, type Voice } from "../parts/say.ts";
import { shareText } from "../parts/share.ts";
import { UnitSwitch } from "../parts/unit-switch.tsx";
import { useChart } from "../parts/use-chart.ts";
import { useFragment } from "../parts/use-fragment.ts";
import { useLater } from "../parts/use-later.ts";
import { useWorker } from "../parts/use-worker.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { Messages } from "../words/messages.ts";
import type { FitsAnswer, FitsQuestion } from "../work/fits-answer.ts";
import { emptyFits, type FitsState, fitsKeys, MOST_CUTS } from "../work/fits-state.ts";
import { writeFragment } from "../work/fragment.ts";
import type { ShelfChart } from "./choose.tsx";
import { FitsRuler } from "./fits-figure.tsx";
import { ServedTable, SizesTable } from "./fits-tables.tsx";

interface FitsProps {
  readonly lang: Lang;
  readonly words: Words["fits"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly messages?: Messages;
  readonly shelf: readonly ShelfChart[];
  readonly start: FitsState;
  readonly first: FitsAnswer;
  /** Mean statures of the survey, in mm. */
  readonly statures: Readonly<Record<"women" | "men", number>>;
  readonly readAddress: string;
}

function createWorker(): Worker {
  return new Worker(new URL("../workers/fits.ts", import.meta.url), { type: "module" });
}

/** The page that tells whom a chart fits. */
export function Fits(props: FitsProps): JSX.Element {
  const { lang, words, parts, dimensions, messages, shelf, start, first, statures, readAddress } = props;
  const keys = useMemo(() => fitsKeys(shelf.map(({ id }) => id)), [shelf]);
  const { state, change, problems, ready, tooLong } = useFragment({
    start,
    empty: emptyFits,
    keys,
    words: parts,
  });
  const own = state.shelf === "" ? state.pasted : "";
  const pasted = useChart(own, words.pasteName, { create: createWorker });
  const { answer, isBusy, failure, ask } = useWorker<FitsQuestion, FitsAnswer>(createWorker, first);
  const { unit } = state;
  const voice = useMemo<Voice>(() => ({ lang, unit, messages }), [lang, unit, messages]);
  const chart =
    shelf.find(({ id }) => id === state.shelf)?.chart ?? (own.trim() === "" ? undefined : pasted.chart);
  const { people, women, tallWomen, tallMen, members, chance, span } = state;
  // A text that is still being read is waited for, so that the answer does not come and go.
  const isReading = own.trim() !== "" && pasted.text !== own && pasted.failure === undefined;
  const question = useMemo<FitsQuestion>(
    () => ({ state: { people, women, tallWomen, tallMen, members, chance, span }, chart }),
    [people, women, tallWomen, tallMen, members, chance, span, chart],
  );
  // The example's answer is there already; only what differs from it is asked.
  const asked = useRef(false);
  const isFirst = state === start;
  useEffect(() => {
    if (!ready || isReading || (!asked.current && isFirst)) return;
    asked.current = true;
    ask(question, 150);
  }, [ready, isReading, question, ask, isFirst]);

  const set = useCallback(
    <Name extends keyof FitsState>(name: Name, value: FitsState[Name], kind: "typing" | "step" = "step") =>
      change((old) => ({ ...old, [name]: value }), kind),
    [change],
  );
  const problemsOf = (field: string): readonly Problem[] =>
    answer.issues.filter((entry) => entry.field === field).map((entry) => sayFitsIssue(entry, words, voice));

  // Each part is drawn in a task of its own, so that no task is long.
  const figures = useLater(answer, 40);
  const tables = useLater(answer, 80);
  const shownHead = useMemo(() => <Head {...{ answer, words, voice }} />, [answer, words, voice]);
  const shownFigures = useMemo(
    () =>
      figures.figures.map((figure) => (
        <div class="panel" key={figure.dimension}>
          <FitsRuler
            {...{ figure, words, parts, voice }}
            chart={figures.chart ?? ""}
            dimension={dimensions[figure.dimension]}
          />
        </div>
      )),
    [figures, words, parts, dimensions, voice],
  );
  const shownTables = useMemo(
    () => <Tables {...{ words, parts, dimensions, voice }} answer={tables} />,
    [tables, words, parts, dimensions, voice],
  );
  const stocked = useLater(answer, 120);
  const shownStock = useMemo(() => <Stock {...{ words, voice }} answer={stocked} />, [stocked, words, voice]);
  const cut = useLater(answer, 160);
  const shownCuts = useMemo(
    () => <Cuts {...{ words, parts, dimensions, voice }} answer={cut} count={state.sizes} />,
    [cut, words, parts, dimensions, voice, state.sizes],
  );
  const cuts = people === "both" ? (["women", "men"] as const) : [people];

  return (
    <>
      <LinkProblems problems={problems} words={parts} />
      <div class="row screen-only toolbar">
        <UnitSwitch unit={unit} words={parts} onChange={(value) => set("unit", value)} />
      </div>
      <div class="bench">
        <form class="not-content screen-only" onSubmit={(event) => event.preventDefault()} noValidate>
          <section class="panel" aria-labelledby="pack-title">
            <h2 id="pack-title" class="ruled">
              {words.packTitle}
            </h2>
            <label class="label" for="pack">
              {words.pack}
            </label>
            <select
              id="pack"
              value={state.shelf}
              onChange={(event) => set("shelf", event.currentTarget.value)}
            >
              {shelf.map(({ id, chart: { chart: name } }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
              <option value="">{words.ownPack}</option>
            </select>
            {state.shelf === "" ? (
              <div class="below">
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
                      {fill(words.pasteRead, { sizes: pasted.sizes, chart: pasted.chart.chart })}
                    </p>
                  )}
                  {pasted.told.slice(0, 5).map(({ issue, line }, index) => {
                    const problem = sayIssue(issue, voice);
                    const message =
                      line === undefined
                        ? problem.message
                        : `${fill(parts.line, { line })}: ${problem.message}`;
                    return (
                      <ProblemLine
                        key={`${issue.code} ${index}`}
                        problem={{ ...problem, message }}
                        words={parts}
                      />
                    );
                  })}
                </div>
                {state.pasted === "" || tooLong !== undefined ? null : (
                  <p>
                    <a href={`${readAddress}#${writeFragment(state.pasted, pastedKeys)}`}>
                      {words.pasteLook}
                    </a>
                  </p>
                )}
              </div>
            ) : null}
          </section>
          <section class="panel" aria-labelledby="people-title">
            <h2 id="people-title" class="ruled">
              {words.peopleTitle}
            </h2>
            <ChoiceField
              name="people"
              legend={words.people}
              value={people}
              choices={[
                ["women", words.whom.women],
                ["men", words.whom.men],
                ["both", words.whom.both],
              ]}
              onChange={(value) => set("people", value)}
            />
            {people === "both" ? (
              <Slider
                id="women"
                label={words.share}
                value={women}
                least={1}
                most={99}
                said={fill(words.shareValue, { women, men: 100 - women })}
                onInput={(value, kind) => set("women", value, kind)}
              />
            ) : null}
            {cuts.map((one) => {
              const field = one === "women" ? "tallWomen" : "tallMen";
              return (
                <LengthField
                  key={one}
                  id={field}
                  label={words.tall[one]}
                  hint={fill(words.tallHint, { mean: lengthText(statures[one], unit, lang) })}
                  value={state[field]}
                  problems={problemsOf(field)}
                  words={parts}
                  onInput={(text) => set(field, text, "typing")}
                />
              );
            })}
          </section>
          <section class="panel" aria-labelledby="share-title">
            <h2 id="share-title" class="ruled">
              {words.shareTitle}
            </h2>
            <p class="hint">{words.shareHint}</p>
            <LinkRow words={parts} tooLong={tooLong} fragment={() => writeFragment(state, keys)} />
          </section>
          {answer.coverage === undefined ? null : (
            <div class="strip">
              <strong>
                {fill(words.leavesOut, { share: shareText(answer.coverage.byNone.share, lang) })}
              </strong>
              <button
                type="button"
                class="small"
                onClick={() => document.getElementById("answer-title")?.focus()}
              >
                {words.seeWhom}
              </button>
            </div>
          )}
        </form>
        <section class="answer" aria-labelledby="answer-title" aria-busy={isBusy}>
          <h2 id="answer-title" class="unseen" tabIndex={-1}>
            {words.answerTitle}
          </h2>
          {failure === undefined ? null : (
            <p class="note error" role="alert">
              {fill(parts.failed, { reason: failure })}
            </p>
          )}
          {shownHead}
          {shownFigures}
          {shownTables}
        </section>
      </div>
      <div class="fits-below">
        <section class="panel" aria-labelledby="stock-title">
          <h2 id="stock-title" class="ruled">
            {words.stockTitle}
          </h2>
          <p class="hint">{words.stockHint}</p>
          <div class="pair screen-only">
            {(["members", "chance"] as const).map((field) => (
              <LengthField
                key={field}
                id={field}
                label={words[field]}
                value={state[field]}
                problems={problemsOf(field)}
                words={parts}
                onInput={(text) => set(field, text, "typing")}
              />
            ))}
          </div>
          {shownStock}
        </section>
        <section class="panel" aria-labelledby="cut-title">
          <h2 id="cut-title" class="ruled">
            {words.cutTitle}
          </h2>
          <p class="hint">{words.cutHint}</p>
          <div class="pair screen-only">
            <LengthField
              id="span"
              label={words.span}
              value={span}
              problems={problemsOf("span")}
              words={parts}
              onInput={(text) => set("span", text, "typing")}
            />
            <Slider
              id="sizes"
              label={words.count}
              value={state.sizes}
              least={1}
              most={MOST_CUTS}
              said={state.sizes === 1 ? words.countOne : fill(words.countValue, { count: state.sizes })}
              onInput={(value, kind) => set("sizes", value, kind)}
            />
          </div>
          {shownCuts}
        </section>
      </div>
      <Sample
        {...{ words }}
        measured={answer.measured}
        source={sayText(first.coverage?.people.source ?? "", voice)}
      />
    </>
  );
}

const pastedKeys = {
  chart: { read: (value: string) => value, write: (value: string) => value },
};

function sayFitsIssue(
  { issue, code }: FitsAnswer["issues"][number],
  words: Words["fits"],
  voice: Voice,
): Problem {
  if (issue !== undefined) return sayIssue(issue, voice);
  const { message, expected } = words.problems[code ?? "many"];
  return { severity: code === "many" ? "warning" : "error", message, expected };
}

interface SliderProps {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly said: string;
  readonly onInput: (value: number, kind: "typing" | "step") => void;
}

function Slider({ id, label, value, least, most, said, onInput }: SliderProps): JSX.Element {
  return (
    <div class="field">
      <label class="label" for={id}>
        {label}
      </label>
      <input
        id={id}
        type="range"
        min={least}
        max={most}
        step="1"
        value={value}
        aria-valuetext={said}
        onInput={(event) => onInput(Number(event.currentTarget.value), "typing")}
      />
      <p class="hint">{said}</p>
    </div>
  );
}

interface PartProps {
  readonly answer: FitsAnswer;
  readonly words: Words["fits"];
  readonly voice: Voice;
}

function Head({ answer, words, voice }: PartProps): JSX.Element {
  const { coverage, chart = "" } = answer;
  const { lang } = voice;
  if (coverage === undefined) {
    return (
      <section class="panel" aria-live="polite">
        <h3>{answer.chart === undefined ? words.noChart : words.nothing}</h3>
      </section>
    );
  }
  const { byNone, parts } = coverage;
  const cuts =
    parts.length === 2
      ? [
          fill(words.ofCut.women, { share: shareText(parts[0]?.coverage.byNone.share ?? 0, lang) }),
          fill(words.ofCut.men, { share: shareText(parts[1]?.coverage.byNone.share ?? 0, lang) }),
        ]
      : [
          fill(words.ofCut[answer.state.people === "men" ? "men" : "women"], {
            share: shareText(byNone.share, lang),
          }),
        ];
  const { low, high } = byNone;
  const ends =
    low === undefined || high === undefined
      ? undefined
      : [low, high].map((end) => shareText(Math.min(1, Math.max(0, end)), lang));
  return (
    <section class="panel headline" aria-live="polite">
      <p class="headline-pack">{chart}</p>
      <p class="headline-size">{fill(words.leavesOut, { share: shareText(byNone.share, lang) })}</p>
      <p>{fill(words.leavesOutWords, { chart, list: cuts.join(words.and) })}</p>
      {ends === undefined ? (
        <p class="hint">{words.noBand}</p>
      ) : ends[0] === ends[1] ? null : (
        <p class="hint">{fill(words.band, { low: ends[0] ?? "", high: ends[1] ?? "" })}</p>
      )}
    </section>
  );
}

function Tables(
  props: PartProps & { readonly parts: Words["parts"]; readonly dimensions: Words["dimensions"] },
): JSX.Element | null {
  const { answer, words, parts, dimensions, voice } = props;
  const { coverage, figures, chart = "" } = answer;
  const told = answer.issues.filter(({ field }) => field === undefined);
  return (
    <>
      {coverage === undefined ? null : (
        <div class="panel">
          <ServedTable {...{ coverage, figures, chart, words, dimensions, voice }} />
          <SizesTable {...{ coverage, figures, chart, words, dimensions, voice }} />
          {coverage.band === undefined ? null : <p class="hint">{words.inBrackets}</p>}
        </div>
      )}
      {told.length === 0 ? null : (
        <section class="panel" aria-labelledby="told-title">
          <h3 id="told-title">{words.about}</h3>
          {told.slice(0, 8).map((entry, index) => (
            <ProblemLine
              key={`${entry.issue?.code ?? entry.code} ${index}`}
              problem={sayFitsIssue(entry, words, voice)}
              words={parts}
            />
          ))}
        </section>
      )}
    </>
  );
}

function Stock({ answer, words, voice }: PartProps): JSX.Element | null {
  const { stock, shares, coverage } = answer;
  const { lang } = voice;
  if (coverage === undefined) return <p>{words.noChart}</p>;
  if (stock === undefined) return coverage.served.share > 0 ? null : <p>{words.noStock}</p>;
  const number = new Intl.NumberFormat(lang, { maximumFractionDigits: 1 });
  return (
    <div aria-live="polite">
      <p id="stock-line" class="fits-line">
        {fill(words.stockLine, { total: stock.total, members: stock.members })}
      </p>
      <section class="scroll" aria-labelledby="stock-line" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.stockSize}</th>
              <th scope="col" class="number">
                {words.stockCount}
              </th>
              <th scope="col" class="number">
                {words.stockPart}
              </th>
            </tr>
          </thead>
          <tbody>
            {stock.sizes.map(({ size, count }, place) => (
              <tr key={size}>
                <th scope="row">{size}</th>
                <td class="number" data-stock={size}>
                  {count}
                </td>
                <td class="number">{shareText(Math.min(1, shares?.sizes[place]?.ofOrder ?? 0), lang)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p>
        {fill(words.stockWords, {
          chance: shareText(Math.min(1, stock.chance), lang),
          unserved: number.format(stock.expectedUnserved),
          members: stock.members,
        })}
      </p>
      <p class="hint">{words.assignment[stock.assignment]}</p>
    </div>
  );
}

function Cuts(
  props: PartProps & {
    readonly parts: Words["parts"];
    readonly dimensions: Words["dimensions"];
    readonly count: number;
  },
): JSX.Element | null {
  const { answer, words, parts, voice, count } = props;
  const { lang, unit } = voice;
  const best = answer.cuts.find((one) => one.count === count);
  if (best === undefined || answer.spanMm === undefined) return null;
  const rows = best.ranges.map(({ fromMm, toMm, within }, index) => ({
    key: String(index),
    name: String(index + 1),
    fromMm,
    toMm,
    value: shareText(within, lang),
  }));
  const line = fill(count === 1 ? words.cutLineOne : words.cutLine, {
    count: count === 1 ? words.countOne : fill(words.countValue, { count }),
    span: lengthText(answer.spanMm, unit, lang),
    share: shareText(best.served, lang),
  });
  return (
    <div aria-live="polite">
      <p class="fits-line" data-served={best.served}>
        {line}
      </p>
      <Ruler
        title={words.cutRuler}
        label={fill(words.cutLabel, {
          sizes: rows
            .map(({ name, fromMm, toMm, value }) =>
              fill(words.drawnSize, {
                size: name,
                from: lengthText(fromMm, unit, lang),
                to: lengthText(toMm, unit, lang),
                share: value,
              }),
            )
            .join("; "),
        })}
        groups={[{ key: "cuts", rows }]}
        unit={unit}
        lang={lang}
        words={parts}
        valueHead={words.fitsHead}
      />
      <figure class="ruler">
        <figcaption class="label">{words.growthTitle}</figcaption>
        <div
          class="ruler-grid"
          role="img"
          aria-label={fill(words.growthLabel, {
            most: MOST_CUTS,
            shares: answer.cuts.map(({ served }) => shareText(served, lang)).join("; "),
          })}
        >
          {answer.cuts.map(({ count: number, served }) => (
            <GrowthRow key={number} number={number} served={served} isPicked={number === count} lang={lang} />
          ))}
        </div>
      </figure>
      {answer.coverage === undefined ? null : (
        <p class="hint">
          {fill(words.compare, {
            chart: answer.chart ?? "",
            sizes: answer.sizes,
            share: shareText(answer.coverage.served.share, lang),
          })}
        </p>
      )}
    </div>
  );
}

function GrowthRow(props: {
  readonly number: number;
  readonly served: number;
  readonly isPicked: boolean;
  readonly lang: Lang;
}): JSX.Element {
  const { number, served, isPicked, lang } = props;
  const picked = isPicked ? " picked" : "";
  return (
    <>
      <span class={`ruler-name${picked}`}>{number}</span>
      <svg height="22" aria-hidden="true">
        <rect class={`ruler-bar${picked}`} x="0" y="4" width={`${(served * 100).toFixed(2)}%`} height="14" />
      </svg>
      <span class={`ruler-value${picked}`}>{shareText(served, lang)}</span>
    </>
  );
}

function Sample(props: {
  readonly words: Words["fits"];
  readonly measured: FitsAnswer["measured"];
  readonly source: string;
}): JSX.Element {
  const { words, measured, source } = props;
  const sample = (["women", "men"] as const).flatMap((cut) => {
    const count = measured[cut];
    return count === undefined ? [] : [fill(words.sample[cut], { count })];
  });
  return (
    <section class="note warning fits-sample" aria-labelledby="sample-title">
      <h2 id="sample-title">{words.aboutTitle}</h2>
      <p>{fill(words.source, { sample: sample.join(words.and), source })}</p>
      <ul>
        {words.caveats.map((caveat) => (
          <li key={caveat}>{caveat}</li>
        ))}
      </ul>
    </section>
  );
}
