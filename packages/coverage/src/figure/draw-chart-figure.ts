import { element, label, path } from "@tapewise/figures";
import { complement, type Interval, union } from "@tapewise/intervals";
import { dimensionName } from "@tapewise/landmarks";
import type { ChartFigure, FigureRow } from "./chart-figure.ts";
import { millimetresIn, writeLength, writeShare } from "./figure-text.ts";
import { drawAxis, drawPlot, SHEET } from "./sheet.ts";

const CURVE_TOP = 76;
const CURVE_FOOT = 236;
const BAR = 20;
const LANE = 24;
const DASHES: readonly (string | undefined)[] = [undefined, "7 4", "2 3", "10 3 2 3"];

/**
 * A chart figure as an SVG picture: self-contained, the same text each time, without fonts or colours of its own.
 * People whom the ranges cover are shaded, those beside them hatched.
 *
 * @param id - begins the ids in the picture; give each picture of one page its own
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { chartFigure, drawChartFigure } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,36-41\nM,40-45\n", { chart: "Doily 45" });
 * const figure = chartFigure(chart, referencePopulation("women"), { unit: "cm" });
 * figure.ok && drawChartFigure(figure.value).startsWith("<svg"); // => true
 * ```
 */
export function drawChartFigure(figure: ChartFigure, id = "chart-over-people"): string {
  const { text, fromMm, toMm, curves, covered } = figure;
  const x = (mm: number): number =>
    SHEET.left +
    ((SHEET.right - SHEET.left) * (Math.min(Math.max(mm, fromMm), toMm) - fromMm)) / (toMm - fromMm);
  const peak = Math.max(
    ...curves.flatMap(({ points }) => points.map(([, density]) => density)),
    Number.MIN_VALUE,
  );
  const y = (density: number): number => CURVE_FOOT - ((CURVE_FOOT - CURVE_TOP) * density) / peak;
  const [all] = curves;
  const outline = (all?.points ?? []).map(([mm, density]) => [x(mm), y(density)] as const);
  const area = `${path([[x(fromMm), CURVE_FOOT], ...outline, [x(toMm), CURVE_FOOT]])}Z`;
  const clip = (name: string, parts: readonly Interval[]): string =>
    element(
      "clipPath",
      { id: `${id}-${name}` },
      ...parts.map(({ from, to }) =>
        element("rect", { x: x(from), y: CURVE_TOP, width: x(to) - x(from), height: CURVE_FOOT - CURVE_TOP }),
      ),
    );
  const rows = layRows(figure.rows, fromMm, toMm);
  const foot = CURVE_FOOT + 14 + rows.reduce((sum, { height }) => sum + height, 0);
  let top = CURVE_FOOT + 14;
  const bars: string[] = [];
  for (const { row, lanes, height } of rows) {
    if (figure.rows.length > 1) bars.push(label(SHEET.left, top + 14, row.chart, { "font-weight": 600 }));
    const first = figure.rows.length > 1 ? top + 20 : top;
    for (const [place, size] of row.sizes.entries()) {
      const [left, right] = [x(size.fromMm ?? fromMm), x(size.toMm ?? toMm)];
      bars.push(
        ...drawBar(
          left,
          right,
          first + (lanes[place] ?? 0) * LANE,
          `${size.size}: ${writeShare(size.served)}`,
        ),
      );
    }
    top += height;
  }
  const summary = `At least one size fits ${writeShare(figure.served)}; none fits ${writeShare(1 - figure.served)}. Hatched: beside every range.`;
  return drawPlot(text, id, foot + 66, [
    label(20, 50, summary),
    element(
      "defs",
      {},
      clip("covered", covered),
      clip("beside", complement(union(...covered))),
      element(
        "pattern",
        {
          id: `${id}-hatch`,
          width: 6,
          height: 6,
          patternUnits: "userSpaceOnUse",
          patternTransform: "rotate(45)",
        },
        element("line", { x1: 0, y1: 0, x2: 0, y2: 6, stroke: "currentColor", "stroke-opacity": 0.55 }),
      ),
    ),
    element(
      "g",
      { "clip-path": `url(#${id}-beside)` },
      element("path", { d: area, fill: `url(#${id}-hatch)` }),
    ),
    element(
      "g",
      { "clip-path": `url(#${id}-covered)` },
      element("path", { d: area, fill: "currentColor", "fill-opacity": 0.3 }),
    ),
    ...curves.map(({ points }, k) =>
      element("path", {
        d: path(points.map(([mm, density]) => [x(mm), y(density)])),
        fill: "none",
        stroke: "currentColor",
        "stroke-width": k === 0 ? 2 : 1.5,
        "stroke-dasharray": DASHES[k % DASHES.length],
      }),
    ),
    ...legend(figure),
    ...bars,
    ...drawAxis(
      foot,
      marksOf(figure).map((mm) => ({ x: x(mm), text: writeLength(mm, text.unit) })),
      captionOf(figure),
    ),
  ]);
}

function captionOf({ dimension, text }: ChartFigure): string {
  const name = dimensionName(dimension);
  return `${name.slice(0, 1).toUpperCase()}${name.slice(1)} (${text.unit})`;
}

function legend({ curves }: ChartFigure): readonly string[] {
  if (curves.length < 2) return [];
  return curves.flatMap((curve, k) => [
    element("line", {
      x1: SHEET.right - 190,
      x2: SHEET.right - 160,
      y1: 82 + k * 18,
      y2: 82 + k * 18,
      stroke: "currentColor",
      "stroke-width": k === 0 ? 2 : 1.5,
      "stroke-dasharray": DASHES[k % DASHES.length],
    }),
    label(SHEET.right - 152, 86 + k * 18, curve.label),
  ]);
}

function drawBar(left: number, right: number, top: number, text: string): readonly string[] {
  const width = Math.max(right - left, 1);
  const isRoomy = width > text.length * 7;
  return [
    element("rect", {
      x: left,
      y: top,
      width,
      height: BAR,
      rx: 3,
      fill: "currentColor",
      "fill-opacity": 0.12,
      stroke: "currentColor",
    }),
    isRoomy
      ? label((left + right) / 2, top + 14.5, text, { "text-anchor": "middle", "font-size": 12 })
      : label(right + 5, top + 14.5, text, { "font-size": 12 }),
  ];
}

interface LaidRow {
  readonly row: FigureRow;
  readonly lanes: readonly number[];
  readonly height: number;
}

/** Puts bars that would touch, or whose words would, into lanes below each other. */
function layRows(rows: readonly FigureRow[], fromMm: number, toMm: number): readonly LaidRow[] {
  const perPixel = (toMm - fromMm) / (SHEET.right - SHEET.left);
  return rows.map((row) => {
    const ends: number[] = [];
    const lanes = row.sizes.map((size) => {
      const [from, to] = [size.fromMm ?? fromMm, size.toMm ?? toMm];
      const wordsMm = (size.size.length + 9) * 7 * perPixel;
      const reach = to - from > wordsMm ? to : to + wordsMm;
      const free = ends.findIndex((end) => end <= from);
      const lane = free === -1 ? ends.length : free;
      ends[lane] = reach;
      return lane;
    });
    return { row, lanes, height: ends.length * LANE + (rows.length > 1 ? 26 : 6) };
  });
}

/** Marks at round lengths, about ten of them. */
function marksOf({ fromMm, toMm, text }: ChartFigure): readonly number[] {
  const one = millimetresIn(text.unit);
  const step = [0.5, 1, 2, 5, 10, 20, 50].find((each) => (toMm - fromMm) / (each * one) <= 12) ?? 100;
  const first = Math.ceil(fromMm / (step * one));
  const last = Math.floor(toMm / (step * one));
  return Array.from({ length: last - first + 1 }, (_, k) => (first + k) * step * one);
}
