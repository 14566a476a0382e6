import type { JSX } from "preact";
import type { measurement } from "tapewise";
import type { Lang } from "../layouts/languages.ts";
import { errorNumber, errorText, errorUnit } from "../parts/error-text.ts";
import { lengthNumber, lengthText, type ShownUnit, unitText } from "../parts/lengths.ts";
import { at, FigureKey, percent, RulerAxis } from "../parts/ruler-axis.tsx";
import { rulerScale } from "../parts/ruler-scale.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { HandsAnswer } from "../work/hands-answer.ts";

export interface HandsFigureProps {
  readonly answer: HandsAnswer;
  readonly words: Words["hands"];
  readonly parts: Words["parts"];
  readonly lang: Lang;
  readonly unit: ShownUnit;
}

const ROW = 26;
const MOST_DRAWN = 40;
const AGREEMENT_HEIGHT = 260;
/** As many hands as there are signs to tell apart. */
const SIGNS = 5;

/** The sign of one hand: shapes, because colours alone say nothing to many eyes. */
function Sign(props: { readonly hand: number; readonly x: string; readonly y: number }): JSX.Element {
  const { x, y } = props;
  const hand = props.hand % SIGNS;
  return (
    <svg x={x} y={y} overflow="visible" aria-hidden="true">
      {hand === 0 ? <circle class="hand-sign" r="4.5" /> : null}
      {hand === 1 ? <rect class="hand-sign second" x="-4.5" y="-4.5" width="9" height="9" /> : null}
      {hand === 2 ? <path class="hand-sign third" d="M0 -5.5 5.5 4.5H-5.5Z" /> : null}
      {hand === 3 ? <path class="hand-sign hollow" d="M0 -6 6 0 0 6 -6 0Z" /> : null}
      {hand === 4 ? <circle class="hand-sign hollow" r="4.5" /> : null}
    </svg>
  );
}

/** Every reading on one ruler, a row for each person. */
export function ReadingsFigure({ answer, words, lang, unit }: HandsFigureProps): JSX.Element | null {
  const rows = answer.rows
    .filter((row) => row.meanMm !== undefined)
    .sort((a, b) => (a.meanMm ?? 0) - (b.meanMm ?? 0))
    .slice(0, MOST_DRAWN);
  const read = rows.flatMap(({ cells }) =>
    cells.flatMap(({ mm, state }) => (state === "read" && mm !== undefined ? [mm] : [])),
  );
  if (read.length === 0) return null;
  const scale = rulerScale(read, unit);
  const repeats = Math.max(1, (rows[0]?.cells.length ?? 1) / Math.max(1, answer.measurers.length));
  const people = rows
    .slice(0, 12)
    .map(({ subject, meanMm = 0 }) => `${subject} ${lengthText(meanMm, unit, lang)}`)
    .join(", ");
  return (
    <figure class="ruler" data-figure="readings">
      <figcaption class="label">{words.plotTitle}</figcaption>
      <ul class="figure-key">
        {answer.measurers.slice(0, SIGNS).map((measurer, index) => (
          <li key={measurer}>
            <svg width="28" height="16" aria-hidden="true">
              <Sign hand={index} x="14" y={8} />
            </svg>
            {measurer}
          </li>
        ))}
      </ul>
      <div class="ruler-grid" role="img" aria-label={fill(words.plotLabel, { people })}>
        {rows.map(({ subject, cells, meanMm = 0 }) => {
          const own = cells.flatMap(({ mm, state }) => (state === "read" && mm !== undefined ? [mm] : []));
          const [least, most] = [Math.min(...own), Math.max(...own)];
          return [
            <span key={`${subject} name`} class="ruler-name">
              {subject}
            </span>,
            <svg key={`${subject} row`} height={ROW} aria-hidden="true">
              <line class="plot-faint" x1="0" x2="100%" y1={ROW / 2} y2={ROW / 2} />
              <rect
                class="ruler-band"
                x={at(scale, least)}
                width={percent(scale.at(most) - scale.at(least))}
                y="3"
                height={ROW - 6}
              />
              {cells.map(({ mm, state }, index) =>
                mm === undefined || state !== "read" ? null : (
                  <Sign
                    // Cells have no name but their place.
                    key={`${subject} ${index}`}
                    hand={Math.floor(index / repeats)}
                    x={at(scale, mm)}
                    y={ROW / 2}
                  />
                ),
              )}
            </svg>,
            <span key={`${subject} value`} class="ruler-value">
              {lengthNumber(meanMm, unit, lang)}
            </span>,
          ];
        })}
        <span class="ruler-name ruler-unit">{unitText(unit, lang)}</span>
        <RulerAxis scale={scale} />
        <span />
      </div>
      {answer.rows.length > rows.length ? (
        <p class="hint">{fill(words.plotMore, { most: rows.length })}</p>
      ) : null}
    </figure>
  );
}

/** Differences of two hands over the length, after Bland and Altman. */
export function AgreementFigure(
  props: HandsFigureProps & { readonly pair: measurement.MeasurerAgreement },
): JSX.Element {
  const { pair, words, parts, lang, unit } = props;
  const { first, second, limits, points } = pair;
  const lines = [limits.lowerLimit, limits.bias, limits.upperLimit];
  const scale = rulerScale(
    points.map(({ mean }) => mean),
    unit,
  );
  const heights = [
    0,
    ...points.map(({ difference }) => difference),
    ...lines.flatMap(({ value }) => [value]),
    limits.bias.lower,
    limits.bias.upper,
  ];
  const [least, most] = [Math.min(...heights), Math.max(...heights)];
  const room = (most - least) * 0.1 || 1;
  const y = (mm: number) => AGREEMENT_HEIGHT * (1 - (mm - least + room) / (most - least + 2 * room));
  const small = (mm: number) => errorText(mm, unit, lang);
  const title = fill(words.agreementPlot, { first, second });
  const label = fill(words.agreementLabel, {
    first,
    second,
    bias: small(limits.bias.value),
    lower: small(limits.lowerLimit.value),
    upper: small(limits.upperLimit.value),
  });
  return (
    <figure class="ruler" data-figure="agreement">
      <figcaption class="label">
        {title}, {errorUnit(unit, lang)}
      </figcaption>
      <FigureKey
        entries={[
          { sign: "dot", text: words.keyPoint },
          { sign: "mean", text: words.keyBias },
          { sign: "limit", text: words.keyLimits },
          { sign: "line", text: words.keyZero },
        ]}
      />
      <div class="ruler-grid" role="img" aria-label={label}>
        <svg class="plot-sides" height={AGREEMENT_HEIGHT} aria-hidden="true">
          {apart([0, ...lines.map(({ value }) => value)], y).map((mm) => (
            <text key={mm} class="plot-side" x="100%" y={y(mm) + 4}>
              {errorNumber(mm, unit, lang)}
            </text>
          ))}
        </svg>
        <svg class="plot-clip" height={AGREEMENT_HEIGHT} aria-hidden="true">
          <rect
            class="plot-band"
            x="0"
            width="100%"
            y={y(limits.bias.upper)}
            height={Math.max(1, y(limits.bias.lower) - y(limits.bias.upper))}
          />
          <line class="plot-line" x1="0" x2="100%" y1={y(0)} y2={y(0)} />
          <line
            class="plot-limit"
            x1="0"
            x2="100%"
            y1={y(limits.lowerLimit.value)}
            y2={y(limits.lowerLimit.value)}
          />
          <line
            class="plot-limit"
            x1="0"
            x2="100%"
            y1={y(limits.upperLimit.value)}
            y2={y(limits.upperLimit.value)}
          />
          <line class="plot-mean" x1="0" x2="100%" y1={y(limits.bias.value)} y2={y(limits.bias.value)} />
          {points.map(({ subject, mean, difference }) => (
            <circle key={subject} class="plot-dot" cx={at(scale, mean)} cy={y(difference)} r="4.5" />
          ))}
        </svg>
        <span />
        <span class="ruler-name ruler-unit">{unitText(unit, lang)}</span>
        <RulerAxis scale={scale} />
        <span />
      </div>
      <details class="screen-only">
        <summary>{parts.table}</summary>
        <section class="scroll" aria-label={title} tabIndex={0}>
          <table>
            <caption>{title}</caption>
            <thead>
              <tr>
                <th scope="col">{words.person}</th>
                <th scope="col" class="number">
                  {words.meanLength}, {unitText(unit, lang)}
                </th>
                <th scope="col" class="number">
                  {words.difference}, {errorUnit(unit, lang)}
                </th>
              </tr>
            </thead>
            <tbody>
              {points.slice(0, 200).map(({ subject, mean, difference }) => (
                <tr key={subject}>
                  <th scope="row">{subject}</th>
                  <td class="number">{lengthNumber(mean, unit, lang)}</td>
                  <td class="number">{errorNumber(difference, unit, lang)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </figure>
  );
}

/** Numbers at the side that do not stand on each other; zero goes first. */
function apart(values: readonly number[], y: (mm: number) => number): readonly number[] {
  const kept: number[] = [];
  for (const mm of values) {
    if (kept.every((other) => Math.abs(y(other) - y(mm)) >= 15)) kept.push(mm);
  }
  return kept;
}

/** Where the error of one reading comes from: bars on a ruler of error. */
export function BudgetFigure(
  props: HandsFigureProps & { readonly components: measurement.StudyComponents },
): JSX.Element {
  const { components, words, lang, unit } = props;
  const parts = [
    [words.budgetReading, components.residualVariance],
    [words.budgetMeasurer, components.measurerVariance],
    [words.budgetInteraction, components.interactionVariance],
  ] as const;
  const known = parts.flatMap(([name, variance]) => (variance === undefined ? [] : [{ name, variance }]));
  const all = known.reduce((sum, { variance }) => sum + variance, 0);
  const longest = known.reduce((most, { variance }) => Math.max(most, Math.sqrt(variance)), 0);
  const rows = known.map(({ name, variance }) => ({
    name,
    share: longest === 0 ? 0 : Math.sqrt(variance) / longest,
    text: fill(words.budgetShare, {
      sd: errorText(Math.sqrt(variance), unit, lang),
      share: all === 0 ? 0 : Math.round((100 * variance) / all),
    }),
  }));
  return (
    <figure class="ruler budget" data-figure="budget">
      <figcaption class="label">{words.budgetTitle}</figcaption>
      <div
        class="ruler-grid"
        role="img"
        aria-label={fill(words.budgetLabel, {
          rows: rows.map(({ name, text }) => `${name}: ${text}`).join("; "),
        })}
      >
        {rows.map(({ name, share, text }) => [
          <span key={`${name} name`} class="ruler-name">
            {name}
          </span>,
          <svg key={`${name} bar`} height={ROW} aria-hidden="true">
            <rect
              class={share === 1 ? "ruler-bar picked" : "ruler-bar"}
              x="0"
              width={percent(share)}
              y="4"
              height={ROW - 8}
            />
          </svg>,
          <span key={`${name} value`} class="ruler-value">
            {text}
          </span>,
        ])}
      </div>
    </figure>
  );
}

/** How often each last digit was written, by hand. */
export function DigitsFigure(props: {
  readonly title: string;
  readonly counts: readonly number[];
}): JSX.Element {
  const { title, counts } = props;
  const most = Math.max(1, ...counts);
  const all = counts.reduce((sum, count) => sum + count, 0);
  const height = 70;
  return (
    <figure class="digits">
      <figcaption>{title}</figcaption>
      <svg
        width="100%"
        height={height + 18}
        role="img"
        aria-label={counts.map((count, digit) => `${digit}: ${count}`).join(", ")}
      >
        {counts.map((count, digit) => (
          <svg
            key={`${digit}`}
            x={percent(digit / counts.length)}
            width={percent(1 / counts.length)}
            aria-hidden="true"
          >
            <rect
              class={count > (2.5 * all) / counts.length ? "ruler-bar picked" : "ruler-bar"}
              x="12%"
              width="76%"
              y={height - (count / most) * (height - 4)}
              height={(count / most) * (height - 4)}
            />
            <text class="digit" x="50%" y={height + 14}>
              {digit}
            </text>
          </svg>
        ))}
        <line class="plot-line" x1="0" x2="100%" y1={height} y2={height} />
      </svg>
    </figure>
  );
}
