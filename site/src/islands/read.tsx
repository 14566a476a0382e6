import type { JSX } from "preact";
import { useMemo, useRef } from "preact/hooks";
import type { charts } from "tapewise";
import type { Lang } from "../layouts/languages.ts";
import { lengthNumber, lengthText, unitText } from "../parts/lengths.ts";
import { LinkProblems } from "../parts/link-problems.tsx";
import { LinkRow } from "../parts/link-row.tsx";
import { marksOf } from "../parts/marks-of.ts";
import { ProblemLine } from "../parts/problem.tsx";
import { Ruler, type RulerRow } from "../parts/ruler.tsx";
import { sayIssue, type Voice } from "../parts/say.ts";
import { UnitSwitch } from "../parts/unit-switch.tsx";
import { useChart } from "../parts/use-chart.ts";
import { useFragment } from "../parts/use-fragment.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { Messages } from "../words/messages.ts";
import { type ChartAnswer, type ChartTold, MOST_TOLD } from "../work/chart-answer.ts";
import { writeFragment } from "../work/fragment.ts";
import { emptyReadState, type ReadState, readKeys } from "../work/read-state.ts";
import { LineEditor, selectLine } from "./line-editor.tsx";

interface ReadProps {
  readonly lang: Lang;
  readonly words: Words["read"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly messages?: Messages;
  readonly shelf: readonly { readonly id: string; readonly file: string; readonly text: string }[];
  readonly start: ReadState;
  readonly first: ChartAnswer;
  readonly chooseAddress: string;
}

/** More bars than these make no figure. */
const MOST_DRAWN = 40;

/** The page that reads a chart. */
export function Read(props: ReadProps): JSX.Element {
  const { lang, words, parts, dimensions, messages, shelf, start, first, chooseAddress } = props;
  const { state, change, problems, tooLong } = useFragment({
    start,
    empty: emptyReadState,
    keys: readKeys,
    words: parts,
  });
  const answer = useChart(state.text, words.textLabel, { first, isLookedOver: true });
  const voice: Voice = { lang, unit: state.unit, messages };
  const field = useRef<HTMLTextAreaElement>(null);
  const marks = useMemo(() => marksOf(answer.told), [answer.told]);
  const setText = (text: string, kind: "typing" | "step") => change((old) => ({ ...old, text }), kind);
  const download = () => {
    if (answer.json === undefined) return;
    const address = URL.createObjectURL(new Blob([answer.json], { type: "application/json" }));
    const link = document.createElement("a");
    link.href = address;
    link.download = `${fileName(answer.chart?.chart ?? "chart")}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 1000);
  };
  const fragment = () => writeFragment(state, readKeys);
  const isShort = tooLong === undefined && state.text !== "";

  return (
    <>
      <LinkProblems problems={problems} words={parts} />
      <div class="row screen-only toolbar">
        <UnitSwitch
          unit={state.unit}
          words={parts}
          onChange={(unit) => change((old) => ({ ...old, unit }), "step")}
        />
        <div class="row">
          <label for="example">{words.examples}</label>
          <select
            id="example"
            value={shelf.find(({ text }) => text === state.text)?.id ?? ""}
            onChange={(event) => {
              const chosen = shelf.find(({ id }) => id === event.currentTarget.value);
              if (chosen !== undefined) setText(chosen.text, "step");
            }}
          >
            <option value="">{words.examplesNone}</option>
            {shelf.map(({ id, file }) => (
              <option key={id} value={id}>
                {file}
              </option>
            ))}
          </select>
          <button type="button" class="quiet" onClick={() => setText("", "step")}>
            {words.clear}
          </button>
        </div>
      </div>
      <div class="bench even">
        <section class="panel" aria-labelledby="text-title">
          <h2 id="text-title" class="ruled">
            {words.textTitle}
          </h2>
          <div class="screen-only">
            <LineEditor
              id="chart-text"
              label={words.textLabel}
              hint={words.textHint}
              value={state.text}
              marks={marks}
              isWrong={answer.wrong > 0}
              field={field}
              onInput={(text) => setText(text, "typing")}
              onReplace={(text) => setText(text, "step")}
            />
          </div>
          <div id="chart-text-told" aria-live="polite" aria-busy={answer.isBusy}>
            {state.text.trim() === "" ? null : (
              <p>
                <strong>
                  {answer.wrong + answer.odd === 0
                    ? words.nothing
                    : fill(words.count, { wrong: answer.wrong, odd: answer.odd })}
                </strong>
              </p>
            )}
          </div>
          {answer.failure === undefined ? null : (
            <p class="note error" role="alert">
              {fill(parts.failed, { reason: answer.failure })}
            </p>
          )}
          <Told
            title={words.wrongTitle}
            told={answer.told.filter(({ issue }) => issue.severity === "error")}
            {...{ words, parts, voice }}
            onGo={(line) => field.current !== null && selectLine(field.current, line)}
          />
          <Told
            title={words.oddTitle}
            told={answer.told.filter(({ issue }) => issue.severity === "warning")}
            {...{ words, parts, voice }}
            onGo={(line) => field.current !== null && selectLine(field.current, line)}
          />
          {answer.wrong + answer.odd > MOST_TOLD ? (
            <p class="hint">{fill(words.more, { count: MOST_TOLD })}</p>
          ) : null}
        </section>
        <div>
          <section class="panel" aria-labelledby="understood-title">
            <h2 id="understood-title" class="ruled">
              {words.understoodTitle}
            </h2>
            {answer.chart === undefined ? (
              <p>{state.text.trim() === "" ? words.noChart : words.unreadable}</p>
            ) : (
              <Understood
                chart={answer.chart}
                sizes={answer.sizes}
                {...{ words, parts, dimensions, voice }}
              />
            )}
          </section>
          <section class="panel screen-only" aria-labelledby="take-title">
            <h2 id="take-title" class="ruled">
              {words.takeTitle}
            </h2>
            <p class="hint">{words.takeHint}</p>
            <div class="row">
              <button type="button" disabled={answer.json === undefined} onClick={download}>
                {words.downloadJson}
              </button>
              {isShort && answer.chart !== undefined ? (
                <a class="button quiet" href={`${chooseAddress}#${fragment()}`}>
                  {words.useIt}
                </a>
              ) : null}
            </div>
            <p class="hint share-hint">{words.shareHint}</p>
            <LinkRow words={parts} tooLong={tooLong} fragment={fragment} />
          </section>
        </div>
      </div>
    </>
  );
}

function fileName(chart: string): string {
  const name = chart
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  return name === "" ? "chart" : name.slice(0, 60);
}

interface ToldProps {
  readonly title: string;
  readonly told: readonly ChartTold[];
  readonly words: Words["read"];
  readonly parts: Words["parts"];
  readonly voice: Voice;
  readonly onGo: (line: number) => void;
}

function Told({ title, told, words, parts, voice, onGo }: ToldProps): JSX.Element | null {
  if (told.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul class="told">
        {told.map(({ issue, line }, index) => (
          <li key={`${issue.code} ${line} ${index}`}>
            {line === undefined ? null : (
              <button
                type="button"
                class="quiet small"
                aria-label={fill(words.goLine, { line })}
                onClick={() => onGo(line)}
              >
                {fill(parts.line, { line })}
              </button>
            )}
            <ProblemLine problem={sayIssue(issue, voice)} words={parts} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface UnderstoodProps {
  readonly chart: charts.SizeChart;
  readonly sizes: number;
  readonly words: Words["read"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly voice: Voice;
}

type Table = readonly (charts.Size | charts.BeltSize)[];

function Understood(props: UnderstoodProps): JSX.Element {
  const { chart, sizes, words, parts, dimensions, voice } = props;
  const { lang, unit } = voice;
  const tables: readonly (readonly [title: string, rows: Table])[] = [
    [words.tableTitle, chart.sizes],
    [words.beltsTitle, chart.belts],
  ];
  return (
    <>
      <h3>{chart.chart}</h3>
      <dl class="about">
        {(
          [
            ["maker", chart.maker],
            ["product", chart.product],
            ["cut", chart.cut === undefined ? undefined : words.words[chart.cut]],
            ["harness", chart.harness === undefined ? undefined : words.words[chart.harness]],
            [
              "swappable",
              chart.swappable.length === 0
                ? undefined
                : chart.swappable.map((part) => words.words[part]).join(", "),
            ],
          ] as const
        ).map(([key, value]) => (
          <div key={key}>
            <dt>{words.about[key]}</dt>
            <dd>{value ?? words.notStated}</dd>
          </div>
        ))}
      </dl>
      {tables
        .filter(([, rows]) => rows.length > 0)
        .map(([title, rows]) => (
          <SizeTable
            key={title}
            title={fill(title, { chart: chart.chart, unit: unitText(unit, lang) })}
            rows={rows}
            {...props}
          />
        ))}
      {sizes > chart.sizes.length ? (
        <p class="hint">{fill(words.rowsCap, { most: chart.sizes.length, count: sizes })}</p>
      ) : null}
      {tables.flatMap(([title, rows]) =>
        dimensionsOf(rows).map((dimension) => {
          const drawn: RulerRow[] = rows.flatMap(({ name, ranges }) => {
            const range = ranges[dimension];
            if (range === undefined) return [];
            const { from, to } = range.interval;
            return [{ key: name, name, fromMm: from, toMm: to, inferred: range.basis === "nominal" }];
          });
          const words2 = drawn
            .slice(0, 8)
            .map(({ name, fromMm, toMm }) =>
              fill(words.drawnSize, {
                size: name,
                from: fromMm > 0 ? lengthText(fromMm, unit, lang) : parts.open,
                to: Number.isFinite(toMm) ? lengthText(toMm, unit, lang) : parts.open,
              }),
            )
            .join(", ");
          return (
            <div key={`${title} ${dimension}`}>
              <Ruler
                title={fill(words.drawnTitle, { dimension: dimensions[dimension] })}
                label={fill(words.drawnLabel, { dimension: dimensions[dimension], sizes: words2 })}
                groups={[{ key: title, rows: drawn }]}
                unit={unit}
                lang={lang}
                words={parts}
                most={MOST_DRAWN}
              />
              {drawn.length > MOST_DRAWN ? (
                <p class="hint">{fill(words.drawnCap, { most: MOST_DRAWN, count: sizes })}</p>
              ) : null}
            </div>
          );
        }),
      )}
    </>
  );
}

function dimensionsOf(rows: Table): readonly charts.ChartDimension[] {
  const found = new Set<charts.ChartDimension>();
  for (const { ranges } of rows) {
    for (const dimension of Object.keys(ranges)) found.add(dimension as charts.ChartDimension);
  }
  return [...found];
}

function SizeTable(props: UnderstoodProps & { readonly title: string; readonly rows: Table }): JSX.Element {
  const { title, rows, words, parts, dimensions, voice } = props;
  const columns = dimensionsOf(rows);
  const litres = rows.map((row) => ("capacityLitres" in row ? row.capacityLitres : undefined));
  const hasLitres = litres.some((value) => value !== undefined);
  const hasInferred = rows.some(({ ranges }) =>
    Object.values(ranges).some((range) => range?.basis === "nominal"),
  );
  return (
    <>
      <section class="scroll" aria-label={title} tabIndex={0}>
        <table>
          <caption>{title}</caption>
          <thead>
            <tr>
              <th scope="col">{parts.size}</th>
              {columns.map((dimension) => (
                <th key={dimension} scope="col" class="number">
                  {dimensions[dimension]}
                </th>
              ))}
              {hasLitres ? (
                <th scope="col" class="number">
                  {words.capacity}
                </th>
              ) : null}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                {columns.map((dimension) => (
                  <td key={dimension} class="number">
                    {rangeText(row.ranges[dimension], props)}
                  </td>
                ))}
                {hasLitres ? (
                  <td class="number">
                    {litres[index] === undefined
                      ? "–"
                      : fill(words.litres, {
                          litres: new Intl.NumberFormat(voice.lang).format(litres[index]),
                        })}
                  </td>
                ) : null}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {hasInferred ? <p class="hint">{words.inferredNote}</p> : null}
    </>
  );
}

function rangeText(range: charts.SizeRange | undefined, { words, voice }: UnderstoodProps): string {
  if (range === undefined) return "–";
  const write = (mm: number) => lengthNumber(mm, voice.unit, voice.lang);
  const { from, to } = range.interval;
  const star = range.basis === "nominal" ? "*" : "";
  if (!(from > 0)) return fill(words.upTo, { to: write(to) }) + star;
  if (!Number.isFinite(to)) return fill(words.from, { from: write(from) }) + star;
  return fill(words.range, { from: write(from), to: write(to) }) + star;
}
