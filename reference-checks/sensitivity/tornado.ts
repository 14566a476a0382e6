// Colours of the reader's theme; where a page has none of these names, the text's own colour.
const INK = "var(--sl-color-text, currentColor)";
const QUIET = "var(--sl-color-gray-3, currentColor)";
const ACCENT = "var(--sl-color-text-accent, currentColor)";

/** One bar: from what it is at the low end of the range to what it is at the high end. */
export interface TornadoBar {
  readonly label: string;
  readonly low: number;
  readonly high: number;
}

export interface Tornado {
  /** Unique on the page. */
  readonly name: string;
  readonly title: string;
  readonly description: string;
  /** Where nothing is moved; in per cent, as the bars. */
  readonly base: number;
  readonly bars: readonly TornadoBar[];
}

const round = (value: number): number => Math.round(value * 10) / 10;
const text = (x: number, y: number, words: string, anchor: "start" | "middle" | "end"): string =>
  `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" font-size="13" fill="${INK}">${words}</text>`;
const line = (x1: number, y1: number, x2: number, y2: number, colour: string): string =>
  `<line x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${round(y2)}" stroke="${colour}"/>`;

const reach = ({ low, high }: TornadoBar, base: number): number =>
  Math.max(Math.abs(low - base), Math.abs(high - base));

const LEFT = 300;
const RIGHT = 620;
const ROW = 26;

/** A step of 1, 2 or 5 times a power of ten that makes four to eight of them. */
function stepFor(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / 4));
  return [1, 2, 5, 10].map((factor) => factor * power).find((step) => span / step <= 8) ?? span;
}

/** The bars in order of their reach, the longest on top: hollow towards the low end, filled towards the high one. */
export function drawTornado({ name, title, description, base, bars }: Tornado): string {
  const sorted = [...bars].sort((a, b) => reach(b, base) - reach(a, base));
  const values = sorted.flatMap(({ low, high }) => [low, high]);
  const [least, most] = [Math.min(base, ...values), Math.max(base, ...values)];
  const step = stepFor(Math.max(most - least, 0.1));
  const [from, to] = [Math.floor(least / step) * step, Math.ceil(most / step) * step];
  const x = (value: number): number => LEFT + ((value - from) / (to - from)) * (RIGHT - LEFT);
  const bottom = 34 + sorted.length * ROW;
  const ticks = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
  const decimals = Math.max(0, -Math.floor(Math.log10(step)));
  const bar = (at: number, y: number, isHigh: boolean): string => {
    const [a, b] = [Math.min(x(at), x(base)), Math.max(x(at), x(base))];
    const fill = isHigh ? ACCENT : "none";
    return `<rect x="${round(a)}" y="${round(y)}" width="${round(Math.max(b - a, 0.5))}" height="8" fill="${fill}" stroke="${isHigh ? ACCENT : QUIET}"/>`;
  };
  const parts = [
    `<rect x="${LEFT}" y="6" width="14" height="8" fill="none" stroke="${QUIET}"/>`,
    text(LEFT + 20, 15, "low end", "start"),
    `<rect x="${LEFT + 100}" y="6" width="14" height="8" fill="${ACCENT}" stroke="${ACCENT}"/>`,
    text(LEFT + 120, 15, "high end", "start"),
    ...sorted.flatMap(({ label, low, high }, i) => {
      const top = 28 + i * ROW;
      return [text(LEFT - 10, top + 13, label, "end"), bar(low, top, false), bar(high, top + 9, true)];
    }),
    line(x(base), 22, x(base), bottom, INK),
    line(LEFT, bottom, RIGHT, bottom, INK),
    ...ticks.flatMap((tick) => [
      line(x(tick), bottom, x(tick), bottom + 5, INK),
      text(x(tick), bottom + 20, `${tick.toFixed(decimals)} %`, "middle"),
    ]),
  ];
  const [width, height] = [650, bottom + 30];
  return [
    "<figure>",
    `<svg role="img" aria-labelledby="${name}-title ${name}-desc" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" style="max-width: 100%; height: auto" xmlns="http://www.w3.org/2000/svg">`,
    `<title id="${name}-title">${title}</title>`,
    `<desc id="${name}-desc">${description}</desc>`,
    ...parts,
    "</svg>",
    `<figcaption>${title}. The table below says the same.</figcaption>`,
    "</figure>",
  ].join("\n");
}
