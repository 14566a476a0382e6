import type { JSX } from "preact";
import type { Lang } from "../layouts/languages.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import { lengthNumber, lengthText, type ShownUnit, unitText } from "./lengths.ts";
import { rulerScale, type Scale, type Tick } from "./ruler-scale.ts";

/** One interval on the ruler; an end that is not there is infinite. */
export interface RulerRow {
  readonly key: string;
  readonly name: string;
  readonly fromMm: number;
  readonly toMm: number;
  /** The range was inferred from a single length. */
  readonly inferred?: boolean;
  readonly picked?: boolean;
  /** What stands at the right end of the row. */
  readonly value?: string;
}

/** Rows that belong together, such as the sizes of one chart. */
export interface RulerGroup {
  readonly key: string;
  readonly name?: string;
  readonly rows: readonly RulerRow[];
}

/** A length with its uncertainty, drawn through all the rows. */
export interface RulerEstimate {
  readonly name: string;
  readonly meanMm: number;
  readonly lowerMm: number;
  readonly upperMm: number;
}

interface RulerProps {
  readonly title: string;
  /** The figure in a sentence, for those who do not see it. */
  readonly label: string;
  readonly groups: readonly RulerGroup[];
  readonly estimate?: RulerEstimate;
  readonly unit: ShownUnit;
  readonly lang: Lang;
  readonly words: Words["parts"];
  /** Head of the column at the right end, in the table. */
  readonly valueHead?: string;
  /** More rows than this are not drawn; the table has them all. */
  readonly most?: number;
  /** Whether rows stand close together, as on the printed card. */
  readonly isTight?: boolean;
  /** Whether the table under the figure can be opened. */
  readonly table?: boolean;
}

const ROW = 28;
const TIGHT_ROW = 20;
const AXIS = 34;

/**
 * The one picture of this site: intervals over a ruler, and through them what was read. Every position is a
 * percentage and every text has its own size, so that nothing is scaled on a narrow screen.
 */
export function Ruler(props: RulerProps): JSX.Element {
  const { title, label, groups, estimate, unit, lang, most = 60 } = props;
  const row = props.isTight === true ? TIGHT_ROW : ROW;
  const all = groups.flatMap((group) => group.rows);
  const drawn = cap(groups, most);
  const scale = rulerScale(
    [
      ...all.flatMap(({ fromMm, toMm }) => [fromMm, toMm]),
      ...(estimate === undefined ? [] : [estimate.lowerMm, estimate.upperMm]),
    ].filter((mm) => mm > 0),
    unit,
  );
  return (
    <figure class="ruler">
      <figcaption class="label">{title}</figcaption>
      <div class="ruler-grid" role="img" aria-label={label}>
        {drawn.map((group) => [
          group.name === undefined ? null : (
            <div class="ruler-group" key={`${group.key} name`}>
              {group.name}
            </div>
          ),
          group.rows.map((entry) => (
            <Row key={`${group.key} ${entry.key}`} row={entry} height={row} {...{ scale, estimate }} />
          )),
        ])}
        {estimate === undefined ? null : (
          <>
            <span class="ruler-name ruler-you-name">{estimate.name}</span>
            <svg height={row} aria-hidden="true">
              <line
                class="ruler-you"
                x1={x(scale, estimate.lowerMm)}
                x2={x(scale, estimate.upperMm)}
                y1={row / 2}
                y2={row / 2}
              />
              <line
                class="ruler-you"
                x1={x(scale, estimate.lowerMm)}
                x2={x(scale, estimate.lowerMm)}
                y1={row / 2 - 6}
                y2={row / 2 + 6}
              />
              <line
                class="ruler-you"
                x1={x(scale, estimate.upperMm)}
                x2={x(scale, estimate.upperMm)}
                y1={row / 2 - 6}
                y2={row / 2 + 6}
              />
              <circle class="ruler-dot" cx={x(scale, estimate.meanMm)} cy={row / 2} r="5" />
            </svg>
            <span class="ruler-value ruler-you-name">{lengthNumber(estimate.meanMm, unit, lang)}</span>
          </>
        )}
        <span class="ruler-name ruler-unit">{unitText(unit, lang)}</span>
        <Axis scale={scale} />
        <span />
      </div>
      {props.table === false ? null : <RulerTable {...props} />}
    </figure>
  );
}

function Row(props: {
  readonly row: RulerRow;
  readonly height: number;
  readonly scale: Scale;
  readonly estimate: RulerEstimate | undefined;
}): JSX.Element {
  const { row, height, scale, estimate } = props;
  const edge = height === ROW ? 6 : 3;
  const middle = height / 2;
  const picked = row.picked === true ? " picked" : "";
  const left = scale.at(row.fromMm);
  const right = scale.at(row.toMm);
  return (
    <>
      <span class={`ruler-name${picked}`}>{row.name}</span>
      <svg height={height} aria-hidden="true">
        {estimate === undefined ? null : (
          <rect
            class="ruler-band"
            x={x(scale, estimate.lowerMm)}
            width={percent(scale.at(estimate.upperMm) - scale.at(estimate.lowerMm))}
            y="0"
            height={height}
          />
        )}
        {row.fromMm === row.toMm ? (
          <line class="ruler-point" x1={percent(left)} x2={percent(left)} y1={edge} y2={height - edge} />
        ) : (
          <rect
            class={`ruler-bar${picked}${row.inferred === true ? " inferred" : ""}`}
            x={percent(left)}
            width={percent(right - left)}
            y={edge}
            height={height - 2 * edge}
          />
        )}
        {row.fromMm > 0 && Number.isFinite(row.fromMm) ? null : (
          <path class="ruler-more" d={`M9 ${middle - 5} 4 ${middle} 9 ${middle + 5}`} />
        )}
        {Number.isFinite(row.toMm) ? null : (
          <svg x="100%" overflow="visible" aria-hidden="true">
            <path class="ruler-more" d={`M-9 ${middle - 5} -4 ${middle} -9 ${middle + 5}`} />
          </svg>
        )}
        {estimate === undefined ? null : (
          <line
            class="ruler-mean"
            x1={x(scale, estimate.meanMm)}
            x2={x(scale, estimate.meanMm)}
            y1="0"
            y2={height}
          />
        )}
      </svg>
      <span class={`ruler-value${picked}`}>{row.value ?? ""}</span>
    </>
  );
}

function Axis({ scale }: { readonly scale: Scale }): JSX.Element {
  return (
    <svg height={AXIS} aria-hidden="true">
      <rect class="ruler-axis" x="0" y="2" width="100%" height={AXIS - 4} />
      <line class="ruler-edge" x1="0" x2="100%" y1="2" y2="2" />
      {scale.ticks.map(({ mm, size }) => (
        <line
          key={mm}
          class={size === "long" ? "ruler-tick long" : "ruler-tick"}
          x1={x(scale, mm)}
          x2={x(scale, mm)}
          y1="2"
          y2={size === "long" ? 14 : size === "middle" ? 10 : 7}
        />
      ))}
      {numbersOf(scale).map(({ mm, label }, index) => (
        <text key={mm} class={index % 2 === 0 ? "ruler-number" : "ruler-number odd"} x={x(scale, mm)} y="28">
          {label}
        </text>
      ))}
    </svg>
  );
}

/** The numbered ticks, but for those that an end would cut off. */
function numbersOf({ ticks, at }: Scale): readonly Tick[] {
  return ticks.filter(({ mm, label }) => label !== undefined && at(mm) >= 0.025 && at(mm) <= 0.975);
}

function RulerTable(props: RulerProps): JSX.Element {
  const { title, groups, estimate, unit, lang, words, valueHead } = props;
  const hasGroups = groups.some((group) => group.name !== undefined);
  const hasValues = groups.some((group) => group.rows.some((row) => row.value !== undefined));
  const end = (mm: number) => (mm > 0 && Number.isFinite(mm) ? lengthNumber(mm, unit, lang) : words.open);
  return (
    <details class="screen-only">
      <summary>{words.table}</summary>
      <section class="scroll" aria-label={title} tabIndex={0}>
        <table>
          <caption>
            {title}, {unitText(unit, lang)}
          </caption>
          <thead>
            <tr>
              {hasGroups ? <td /> : null}
              <th scope="col">{words.size}</th>
              <th scope="col" class="number">
                {words.from}
              </th>
              <th scope="col" class="number">
                {words.to}
              </th>
              {hasValues ? (
                <th scope="col" class="number">
                  {valueHead ?? words.chance}
                </th>
              ) : null}
            </tr>
          </thead>
          <tbody>
            {groups.flatMap((group) =>
              group.rows.slice(0, 500).map((row) => (
                <tr key={`${group.key} ${row.key}`}>
                  {hasGroups ? <td>{group.name}</td> : null}
                  <th scope="row">
                    {row.name}
                    {row.inferred === true ? ` (${words.inferred})` : ""}
                  </th>
                  <td class="number">{end(row.fromMm)}</td>
                  <td class="number">{end(row.toMm)}</td>
                  {hasValues ? <td class="number">{row.value}</td> : null}
                </tr>
              )),
            )}
          </tbody>
        </table>
        {estimate === undefined ? null : (
          <p>
            {estimate.name}:{" "}
            {fill(words.estimate, {
              mean: lengthText(estimate.meanMm, unit, lang),
              lower: lengthText(estimate.lowerMm, unit, lang),
              upper: lengthText(estimate.upperMm, unit, lang),
            })}
          </p>
        )}
      </section>
    </details>
  );
}

function cap(groups: readonly RulerGroup[], most: number): readonly RulerGroup[] {
  let left = most;
  return groups.flatMap((group) => {
    const rows = group.rows.slice(0, Math.max(0, left));
    left -= rows.length;
    return rows.length === 0 && group.rows.length > 0 ? [] : [{ ...group, rows }];
  });
}

function x(scale: Scale, mm: number): string {
  return percent(scale.at(mm));
}

function percent(share: number): string {
  return `${Number((share * 100).toFixed(3))}%`;
}
