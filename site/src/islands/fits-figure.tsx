import type { JSX } from "preact";
import { lengthNumber, lengthText, unitText } from "../parts/lengths.ts";
import { across, at, percent, RulerAxis, Stretched } from "../parts/ruler-axis.tsx";
import { rulerScale, type Scale } from "../parts/ruler-scale.ts";
import type { Voice } from "../parts/say.ts";
import { shareText } from "../parts/share.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { FitsFigure } from "../work/fits-answer.ts";

const CURVE = 150;
const ROW = 28;
const MOST_DRAWN = 24;

interface FitsRulerProps {
  readonly figure: FitsFigure;
  readonly chart: string;
  readonly words: Words["fits"];
  readonly parts: Words["parts"];
  readonly dimension: string;
  readonly voice: Voice;
}

/** The people as a curve over the ruler, and under it what each size covers of them. */
export function FitsRuler({ figure, chart, words, parts, dimension, voice }: FitsRulerProps): JSX.Element {
  const { lang, unit } = voice;
  const scale = rulerScale([figure.fromMm, figure.toMm], unit);
  const rows = figure.rows.slice(0, MOST_DRAWN);
  const title = fill(words.drawnTitle, { chart, dimension });
  const isGirth = figure.dimension.endsWith("-girth");
  const { below, above } = figure.outside;
  const length = (mm: number) => (mm > 0 && Number.isFinite(mm) ? lengthText(mm, unit, lang) : parts.open);
  const label = fill(words.drawnLabel, {
    dimension,
    from: length(figure.fromMm),
    to: length(figure.toMm),
    sizes: rows
      .map(({ name, fromMm, toMm, served }) =>
        fill(words.drawnSize, {
          size: name,
          from: length(fromMm),
          to: length(toMm),
          share: shareText(served.share, lang),
        }),
      )
      .join("; "),
    below: shareText(below.share, lang),
    above: shareText(above.share, lang),
    gaps: figure.outside.gaps
      .map(({ within, people }) =>
        fill(words.drawnGap, {
          from: length(within.from),
          to: length(within.to),
          share: shareText(people.share, lang),
        }),
      )
      .join(""),
  });
  return (
    <figure class="ruler">
      <figcaption class="label">{title}</figcaption>
      <p class="fits-ends" aria-hidden="true">
        <span>
          {below.share > 0
            ? `←\u00a0${fill(isGirth ? words.belowGirth : words.belowEnd, { share: shareText(below.share, lang) })}`
            : ""}
        </span>
        <span>
          {above.share > 0
            ? `${fill(isGirth ? words.aboveGirth : words.aboveEnd, { share: shareText(above.share, lang) })}\u00a0→`
            : ""}
        </span>
      </p>
      <div class="ruler-grid" role="img" aria-label={label}>
        <span class="ruler-name ruler-unit">{words.peopleRow}</span>
        <Curve figure={figure} scale={scale} />
        <span />
        {rows.map((row) => (
          <SizeRow key={row.name} row={row} scale={scale} value={shareText(row.served.share, lang)} />
        ))}
        <span class="ruler-name ruler-unit">{unitText(unit, lang)}</span>
        <RulerAxis scale={scale} />
        <span />
      </div>
      <ul class="fits-key" aria-hidden="true">
        <li>
          <svg width="28" height="16" aria-hidden="true">
            <rect class="fits-in" x="1" y="1" width="26" height="14" />
          </svg>
          {words.keyCovered}
        </li>
        <li>
          <svg width="28" height="16" aria-hidden="true">
            <rect class="fits-out" x="1" y="1" width="26" height="14" />
          </svg>
          {words.keyOut}
        </li>
        {figure.parts.map(({ cut }) => (
          <li key={cut}>
            <svg width="28" height="16" aria-hidden="true">
              <line class={`fits-curve ${cut}`} x1="0" x2="28" y1="8" y2="8" />
            </svg>
            {cut === "women" ? words.keyWomen : words.keyMen}
          </li>
        ))}
      </ul>
      <details class="screen-only">
        <summary>{parts.table}</summary>
        <section class="scroll" aria-label={title} tabIndex={0}>
          <table>
            <caption>
              {title}, {unitText(unit, lang)}
            </caption>
            <thead>
              <tr>
                <th scope="col">{parts.size}</th>
                <th scope="col" class="number">
                  {parts.from}
                </th>
                <th scope="col" class="number">
                  {parts.to}
                </th>
                <th scope="col" class="number">
                  {words.fitsHead}
                </th>
              </tr>
            </thead>
            <tbody>
              {figure.rows.map((row) => (
                <tr key={row.name}>
                  <th scope="row">
                    {row.name}
                    {row.isInferred ? ` (${parts.inferred})` : ""}
                  </th>
                  <td class="number">{row.fromMm > 0 ? lengthNumber(row.fromMm, unit, lang) : parts.open}</td>
                  <td class="number">
                    {Number.isFinite(row.toMm) ? lengthNumber(row.toMm, unit, lang) : parts.open}
                  </td>
                  <td class="number">{shareText(row.served.share, lang)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </figure>
  );
}

function Curve({ figure, scale }: { readonly figure: FitsFigure; readonly scale: Scale }): JSX.Element {
  const { density, fromMm, toMm, parts, covered } = figure;
  const most = Math.max(...density, 1e-12);
  const y = (value: number) => CURVE - 4 - (value / most) * (CURVE - 12);
  const lengthAt = (index: number) => fromMm + ((toMm - fromMm) * index) / (density.length - 1);
  const line = (values: readonly number[]) =>
    values
      .map(
        (value, index) =>
          `${index === 0 ? "M" : "L"}${across(scale, lengthAt(index))} ${y(value).toFixed(1)}`,
      )
      .join("");
  const area = (from: number, to: number): string => {
    const first = Math.max(from, fromMm);
    const last = Math.min(to, toMm);
    if (!(last > first)) return "";
    const inside = density.flatMap((value, index) => {
      const mm = lengthAt(index);
      return mm > first && mm < last ? [`L${across(scale, mm)} ${y(value).toFixed(1)}`] : [];
    });
    const foot = y(0);
    return `M${across(scale, first)} ${foot}L${across(scale, first)} ${y(between(first)).toFixed(1)}${inside.join("")}L${across(scale, last)} ${y(between(last)).toFixed(1)}L${across(scale, last)} ${foot}Z`;
  };
  const between = (mm: number): number => {
    const place = ((mm - fromMm) / (toMm - fromMm)) * (density.length - 1);
    const index = Math.min(density.length - 2, Math.max(0, Math.floor(place)));
    const [a = 0, b = 0] = [density[index], density[index + 1]];
    return a + (b - a) * (place - index);
  };
  return (
    <Stretched height={CURVE}>
      <path class="fits-out" d={area(fromMm, toMm)} />
      {covered.map((one) => (
        <path key={one.fromMm} class="fits-in" d={area(one.fromMm, one.toMm)} />
      ))}
      {parts.map((part) => (
        <path key={part.cut} class={`fits-curve ${part.cut}`} d={line(part.density)} />
      ))}
      <path class="fits-curve" d={line(density)} />
    </Stretched>
  );
}

function SizeRow(props: {
  readonly row: FitsFigure["rows"][number];
  readonly scale: Scale;
  readonly value: string;
}): JSX.Element {
  const { row, scale, value } = props;
  const middle = ROW / 2;
  return (
    <>
      <span class="ruler-name">{row.name}</span>
      <svg height={ROW} aria-hidden="true">
        {row.fromMm === row.toMm ? (
          <line class="ruler-point" x1={at(scale, row.fromMm)} x2={at(scale, row.toMm)} y1="6" y2={ROW - 6} />
        ) : (
          <rect
            class={`ruler-bar${row.isInferred ? " inferred" : ""}`}
            x={at(scale, row.fromMm)}
            width={percent(scale.at(row.toMm) - scale.at(row.fromMm))}
            y="6"
            height={ROW - 12}
          />
        )}
        {row.fromMm > 0 ? null : (
          <path class="ruler-more" d={`M9 ${middle - 5} 4 ${middle} 9 ${middle + 5}`} />
        )}
        {Number.isFinite(row.toMm) ? null : (
          <svg x="100%" overflow="visible" aria-hidden="true">
            <path class="ruler-more" d={`M-9 ${middle - 5} -4 ${middle} -9 ${middle + 5}`} />
          </svg>
        )}
      </svg>
      <span class="ruler-value">{value}</span>
    </>
  );
}
