import type { JSX } from "preact";
import type { Lang } from "../layouts/languages.ts";
import { errorNumber, errorText, errorUnit } from "../parts/error-text.ts";
import { lengthNumber, lengthText, type ShownUnit, unitText } from "../parts/lengths.ts";
import { percentText } from "../parts/percent.ts";
import { across, at, FigureKey, type KeyEntry, percent, RulerAxis, Stretched } from "../parts/ruler-axis.tsx";
import { rulerScale, type Scale } from "../parts/ruler-scale.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { AverageAnswer, CountShown, LessonSeries, NamedSize } from "../work/average-answer.ts";
import { tookText } from "./average-words.ts";

interface FigureProps {
  readonly answer: AverageAnswer;
  readonly words: Words["average"];
  readonly parts: Words["parts"];
  readonly lang: Lang;
  readonly unit: ShownUnit;
}

const PATH_HEIGHT = 340;
const PATH_EDGE = 14;
const BARS = 64;
const SIZE_ROW = 26;
/** Points whose readings are drawn as dots and listed: the path shows the rest. */
const MOST_LISTED = 200;

/** The mean after each reading: readings go down the page, lengths along the ruler at its foot. */
export function PathFigure(props: FigureProps & { readonly series: LessonSeries }): JSX.Element {
  const { answer, series, words, lang, unit } = props;
  const { lengthMm, offsetMm, isLengthKnown } = answer;
  const { points, last } = series;
  const showsMedian = answer.state.source === "class" || answer.state.slips !== "none";
  const known = isLengthKnown && lengthMm !== undefined ? [lengthMm] : [];
  const always = known.map((mm) => mm + (offsetMm ?? 0));
  const scale = rulerScale([...points.map(({ readingMm }) => readingMm), ...known, ...always], unit);
  const most = Math.max(10, last.count);
  const y = (count: number) => PATH_EDGE + (Math.log(count) / Math.log(most)) * (PATH_HEIGHT - 2 * PATH_EDGE);
  const down = (mm: (point: (typeof points)[number]) => number, from = points) =>
    from.map((point) => `${across(scale, mm(point))} ${y(point.count).toFixed(1)}`).join("L");
  const banded = points.filter(({ lowerMm }) => lowerMm !== undefined);
  const key: readonly KeyEntry[] = [
    { sign: "dot", text: words.keyReading },
    { sign: "mean", text: words.keyMean },
    ...(showsMedian ? [{ sign: "median", text: words.keyMedian } as const] : []),
    ...(known.length === 0
      ? []
      : [{ sign: "line", text: offsetMm === undefined ? words.keyHeld : words.keyTrue } as const]),
    ...(offsetMm === undefined || offsetMm === 0 ? [] : [{ sign: "dashed", text: words.keyOffset } as const]),
  ];
  const facts = {
    mean: lengthText(last.meanMm, unit, lang),
    count: tookText(last.count, words),
    length: lengthMm === undefined ? "" : lengthText(lengthMm, unit, lang),
  };
  return (
    <figure class="ruler" data-figure="path">
      <figcaption class="label">{words.pathTitle}</figcaption>
      <FigureKey entries={key} />
      <div
        class="ruler-grid"
        role="img"
        aria-label={fill(known.length === 0 ? words.pathLabelClass : words.pathLabel, facts)}
      >
        <svg class="plot-sides" height={PATH_HEIGHT} aria-hidden="true">
          {sidesOf(last.count).map((count) => (
            <text key={count} class="plot-side" x="100%" y={y(count) + 4}>
              {count}
            </text>
          ))}
        </svg>
        <svg class="plot-clip" height={PATH_HEIGHT} aria-hidden="true">
          {sidesOf(last.count).map((count) => (
            <line key={count} class="plot-faint" x1="0" x2="100%" y1={y(count)} y2={y(count)} />
          ))}
          <Stretched height={PATH_HEIGHT}>
            {banded.length > 1 ? (
              <path
                class="plot-band"
                d={`M${down(({ lowerMm = 0 }) => lowerMm, banded)}L${down(({ upperMm = 0 }) => upperMm, banded.toReversed())}Z`}
              />
            ) : null}
          </Stretched>
          {known.map((mm) => (
            <line
              key="true"
              class="plot-line"
              x1={at(scale, mm)}
              x2={at(scale, mm)}
              y1="0"
              y2={PATH_HEIGHT}
            />
          ))}
          {offsetMm === undefined || offsetMm === 0
            ? null
            : always.map((mm) => (
                <line
                  key="always"
                  class="plot-dashed"
                  x1={at(scale, mm)}
                  x2={at(scale, mm)}
                  y1="0"
                  y2={PATH_HEIGHT}
                />
              ))}
          {points.map(({ count, readingMm }) => (
            <circle key={count} class="plot-dot" cx={at(scale, readingMm)} cy={y(count)} r="3" />
          ))}
          <Stretched height={PATH_HEIGHT}>
            {showsMedian ? <path class="plot-median" d={`M${down(({ medianMm }) => medianMm)}`} /> : null}
            <path class="plot-mean" d={`M${down(({ meanMm }) => meanMm)}`} />
          </Stretched>
          <circle class="ruler-dot" cx={at(scale, last.meanMm)} cy={y(last.count)} r="6" />
        </svg>
        <span class="ruler-value ruler-you-name at-end">{lengthNumber(last.meanMm, unit, lang)}</span>
        <span class="ruler-name ruler-unit">{unitText(unit, lang)}</span>
        <RulerAxis scale={scale} />
        <span />
      </div>
      <PathTable {...props} points={points.slice(0, MOST_LISTED)} />
    </figure>
  );
}

function sidesOf(count: number): readonly number[] {
  const sides = [1, 10, 100, 1000, 10_000].filter((side) => side < count * 0.75);
  return [...(sides.length === 0 ? [1] : sides), ...(count > 1 ? [count] : [])];
}

function PathTable(props: FigureProps & { readonly points: LessonSeries["points"] }): JSX.Element {
  const { points, words, parts, lang, unit } = props;
  const write = (mm: number) => lengthNumber(mm, unit, lang);
  return (
    <details class="screen-only">
      <summary>{parts.table}</summary>
      <section class="scroll" aria-label={words.pathTitle} tabIndex={0}>
        <table>
          <caption>
            {words.pathTitle}, {unitText(unit, lang)}
          </caption>
          <thead>
            <tr>
              {[words.readingNumber, words.reading, words.mean, words.band, words.median].map(
                (head, index) => (
                  <th key={`${head} ${index}`} scope="col" class="number">
                    {head}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {points.map((point) => (
              <tr key={point.count}>
                <th scope="row" class="number">
                  {point.count}
                </th>
                <td class="number">{write(point.readingMm)}</td>
                <td class="number">{write(point.meanMm)}</td>
                <td class="number">
                  {point.lowerMm === undefined || point.upperMm === undefined
                    ? "–"
                    : `${write(point.lowerMm)} – ${write(point.upperMm)}`}
                </td>
                <td class="number">{write(point.medianMm)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}

/** Histograms of the mean of more and more readings, with the sizes of the chart over the same ruler. */
export function SpreadFigure(props: FigureProps): JSX.Element {
  const { answer, words, lang, unit } = props;
  const { counts, lengthMm = 0, isLengthKnown } = answer;
  const bars = counts.flatMap((each) => each.bars);
  const ends = bars.flatMap(({ fromMm, toMm }) => [fromMm, toMm]);
  const scale = rulerScale([...ends, lengthMm], unit);
  const sizes = answer.sizes.filter(({ from, to }) => to > scale.fromMm && from < scale.toMm);
  const edges = bordersOf(answer.sizes).filter((mm) => mm > scale.fromMm && mm < scale.toMm);
  const right = (mm: number) => {
    const picked = pickOf(answer.sizes, mm);
    return picked !== undefined && lengthMm >= picked.from && lengthMm <= picked.to;
  };
  const label = counts
    .map(({ count, mean }) =>
      fill(words.spreadRow, {
        count,
        low: lengthText(mean.lowMm, unit, lang),
        high: lengthText(mean.highMm, unit, lang),
      }),
    )
    .join("; ");
  const key: readonly KeyEntry[] = [
    {
      sign: "line",
      text: isLengthKnown ? (answer.offsetMm === undefined ? words.keyHeld : words.keyTrue) : words.mean,
    },
    ...(answer.sizes.length === 0
      ? []
      : [{ sign: "picked", text: words.keyRight } as const, { sign: "bar", text: words.keyWrong } as const]),
  ];
  const truth = <line class="plot-line" x1={at(scale, lengthMm)} x2={at(scale, lengthMm)} y1="0" y2="100%" />;
  return (
    <figure class="ruler" data-figure="spread">
      <figcaption class="label">{words.spreadTitle}</figcaption>
      <p class="hint">{answer.state.source === "class" ? words.spreadHintClass : words.spreadHint}</p>
      <FigureKey entries={key} />
      <div class="ruler-grid" role="img" aria-label={fill(words.spreadLabel, { rows: label })}>
        {sizes.map((size) => (
          <SizeRow key={size.name} size={size} scale={scale}>
            {truth}
          </SizeRow>
        ))}
        {counts.map((each) => (
          <BarsRow
            key={each.count}
            each={each}
            scale={scale}
            isRight={answer.sizes.length === 0 ? undefined : right}
            value={fill(words.off, { error: errorText(each.mean.rmseMm, unit, lang) })}
          >
            {edges.map((mm) => (
              <line key={mm} class="spread-edge" x1={at(scale, mm)} x2={at(scale, mm)} y1="0" y2="100%" />
            ))}
            {truth}
          </BarsRow>
        ))}
        <span class="ruler-name ruler-unit">{unitText(unit, lang)}</span>
        <RulerAxis scale={scale} />
        <span />
      </div>
      <SpreadTable {...props} />
    </figure>
  );
}

function SizeRow(props: {
  readonly size: NamedSize;
  readonly scale: Scale;
  readonly children: JSX.Element;
}): JSX.Element {
  const { size, scale, children } = props;
  const left = scale.at(size.from);
  const right = scale.at(size.to);
  return (
    <>
      <span class="ruler-name">{size.name}</span>
      <svg height={SIZE_ROW} aria-hidden="true">
        <rect class="size-bar" x={percent(left)} width={percent(right - left)} y="6" height={SIZE_ROW - 12} />
        {children}
      </svg>
      <span />
    </>
  );
}

function BarsRow(props: {
  readonly each: CountShown;
  readonly scale: Scale;
  readonly isRight: ((mm: number) => boolean) | undefined;
  readonly value: string;
  readonly children: JSX.Element | readonly (JSX.Element | readonly JSX.Element[])[];
}): JSX.Element {
  const { each, scale, isRight, value, children } = props;
  const top = each.bars.reduce((most, { share }) => Math.max(most, share), 0);
  return (
    <>
      <span class="ruler-name">{each.count}</span>
      <svg height={BARS} aria-hidden="true">
        {each.bars.map(({ fromMm, toMm, share }) => {
          if (share === 0) return null;
          const height = Math.max(1, (share / top) * (BARS - 8));
          const picked = isRight?.((fromMm + toMm) / 2) === true ? " picked" : "";
          return (
            <rect
              key={fromMm}
              class={`ruler-bar thin${picked}`}
              x={at(scale, fromMm)}
              width={percent(scale.at(toMm) - scale.at(fromMm))}
              y={BARS - height}
              height={height}
            />
          );
        })}
        {children}
      </svg>
      <span class="ruler-value">{value}</span>
    </>
  );
}

/** Where the plain rule of a shop changes from one size to the next, as the library has it. */
function bordersOf(sizes: readonly NamedSize[]): readonly number[] {
  const picked = pickable(sizes);
  return picked.slice(1).map(({ from }, index) => (from + (picked[index]?.to ?? from)) / 2);
}

function pickOf(sizes: readonly NamedSize[], mm: number): NamedSize | undefined {
  const picked = pickable(sizes);
  const borders = bordersOf(sizes);
  const index = borders.findIndex((border) => mm <= border);
  return picked[index === -1 ? picked.length - 1 : index];
}

/** A size within another one is never picked. */
function pickable(sizes: readonly NamedSize[]): readonly NamedSize[] {
  const sorted = [...sizes].sort((a, b) =>
    a.from === b.from ? (a.to < b.to ? 1 : -1) : a.from < b.from ? -1 : 1,
  );
  const picked: NamedSize[] = [];
  for (const size of sorted) {
    if (size.to > (picked.at(-1)?.to ?? Number.NEGATIVE_INFINITY)) picked.push(size);
  }
  return picked;
}

function SpreadTable({ answer, words, parts, lang, unit }: FigureProps): JSX.Element {
  const hasSizes = answer.sizes.length > 0;
  const hasFormula = answer.error !== undefined;
  const write = (mm: number) => errorNumber(mm, unit, lang);
  const heads = [
    words.countHead,
    words.biasHead,
    words.sdHead,
    words.offHead,
    ...(hasFormula ? [words.expectedHead] : []),
    words.medianOffHead,
    ...(hasSizes ? [words.wrongHead] : []),
  ];
  return (
    <details class="screen-only">
      <summary>{parts.table}</summary>
      <section class="scroll" aria-label={words.spreadTitle} tabIndex={0}>
        <table>
          <caption>
            {words.spreadTitle}, {errorUnit(unit, lang)}
          </caption>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col" class="number">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {answer.counts.map(({ count, mean, median, expected }) => (
              <tr key={count}>
                <th scope="row" class="number">
                  {count}
                </th>
                <td class="number">{write(mean.biasMm)}</td>
                <td class="number">{write(mean.sdMm)}</td>
                <td class="number">{write(mean.rmseMm)}</td>
                {expected === undefined ? null : <td class="number">{write(expected.rmseMm)}</td>}
                <td class="number">{write(median.rmseMm)}</td>
                {mean.wrongShare === undefined ? null : <td class="number">{wrongText(mean.wrongShare)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}

/** A share of many series, which may truly be none of them. */
function wrongText(share: number): string {
  return share === 0 || share === 1 ? `${share * 100} %` : percentText(share);
}

/** How often a wrong size is picked, as bars from none to all. */
export function WrongFigure({ answer, words }: FigureProps): JSX.Element | null {
  const rows = answer.counts.flatMap(({ count, mean }) =>
    mean.wrongShare === undefined ? [] : [{ count, share: mean.wrongShare }],
  );
  if (rows.length === 0) return null;
  const label = rows.map(({ count, share }) => `${count}: ${wrongText(share)}`).join("; ");
  return (
    <figure class="ruler wrong-bars" data-figure="wrong">
      <figcaption class="label">{words.wrongTitle}</figcaption>
      <div class="ruler-grid" role="img" aria-label={fill(words.wrongLabel, { rows: label })}>
        {rows.map(({ count, share }) => (
          <>
            <span class="ruler-name">{fill(words.wrongMean, { count })}</span>
            <svg height="28" aria-hidden="true">
              <rect class="size-bar" x="0" width="100%" y="5" height="18" />
              <rect class="wrong-bar" x="0" width={percent(share)} y="5" height="18" />
            </svg>
            <strong class="ruler-value">{wrongText(share)}</strong>
          </>
        ))}
      </div>
    </figure>
  );
}
