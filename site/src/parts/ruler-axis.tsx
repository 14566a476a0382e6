import type { ComponentChildren, JSX } from "preact";
import type { Scale } from "./ruler-scale.ts";

const HEIGHT = 34;

/** A place on the ruler as SVG wants it: a percentage, so that nothing is scaled on a narrow screen. */
export function at(scale: Scale, mm: number): string {
  return percent(scale.at(mm));
}

export function percent(share: number): string {
  return `${Number((share * 100).toFixed(3))}%`;
}

/** The yellow rule at the foot of a figure. */
export function RulerAxis({ scale }: { readonly scale: Scale }): JSX.Element {
  return (
    <svg height={HEIGHT} aria-hidden="true">
      <rect class="ruler-axis" x="0" y="2" width="100%" height={HEIGHT - 4} />
      <line class="ruler-edge" x1="0" x2="100%" y1="2" y2="2" />
      {scale.ticks.map(({ mm, size }) => (
        <line
          key={mm}
          class={size === "long" ? "ruler-tick long" : "ruler-tick"}
          x1={at(scale, mm)}
          x2={at(scale, mm)}
          y1="2"
          y2={size === "long" ? 14 : size === "middle" ? 10 : 7}
        />
      ))}
      {scale.ticks.map(({ mm, label }) =>
        label === undefined || scale.at(mm) < 0.025 || scale.at(mm) > 0.975 ? null : (
          <text key={mm} class="ruler-number" x={at(scale, mm)} y="28">
            {label}
          </text>
        ),
      )}
    </svg>
  );
}

/** Paths over a ruler: across goes a thousand steps whatever the width, and lines keep their own. */
export function Stretched(props: {
  readonly height: number;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <svg
      class="stretched"
      width="100%"
      height={props.height}
      viewBox={`0 0 1000 ${props.height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {props.children}
    </svg>
  );
}

/** A place across {@link Stretched}. */
export function across(scale: Scale, mm: number): string {
  return (scale.at(mm) * 1000).toFixed(1);
}

/** What one sign of a figure means. */
export interface KeyEntry {
  readonly sign: "dot" | "mean" | "median" | "line" | "dashed" | "bar" | "picked" | "limit";
  readonly text: string;
}

/** The signs of a figure, in words. */
export function FigureKey({ entries }: { readonly entries: readonly KeyEntry[] }): JSX.Element {
  return (
    <ul class="figure-key">
      {entries.map(({ sign, text }) => (
        <li key={text}>
          <svg width="28" height="16" aria-hidden="true">
            {sign === "dot" ? <circle class="plot-dot" cx="14" cy="8" r="4" /> : null}
            {sign === "mean" ? (
              <>
                <rect class="ruler-band" x="0" y="1" width="28" height="14" />
                <line class="plot-mean" x1="0" x2="28" y1="8" y2="8" />
              </>
            ) : null}
            {sign === "bar" ? <rect class="ruler-bar" x="4" y="2" width="20" height="12" /> : null}
            {sign === "picked" ? <rect class="ruler-bar picked" x="4" y="2" width="20" height="12" /> : null}
            {["median", "line", "dashed", "limit"].includes(sign) ? (
              <line class={`plot-${sign}`} x1="0" x2="28" y1="8" y2="8" />
            ) : null}
          </svg>
          {text}
        </li>
      ))}
    </ul>
  );
}
