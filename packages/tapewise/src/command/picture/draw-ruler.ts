import type { Interval } from "@tapewise/intervals";
import { displayWidth, padEnd, padStart, shorten } from "../text/display-width.ts";
import { PAGE_WIDTH } from "../text/wrap.ts";
import { columnOf, makeScale, marksOf, type Scale } from "./scale.ts";

/** A size as the ruler shows it: its interval in mm, and whether the chart states it or it was inferred. */
export interface RulerSize {
  readonly label: string;
  readonly interval: Interval;
  readonly inferred: boolean;
  readonly note: string;
}

/** The body as the ruler shows it: a mean within an interval, in mm. */
export interface RulerBody {
  readonly label: string;
  readonly meanMm: number;
  readonly lowerMm: number;
  readonly upperMm: number;
  readonly note: string;
}

export interface Ruler {
  readonly sizes: readonly RulerSize[];
  readonly bodies: readonly RulerBody[];
  readonly unit: "cm" | "in";
  readonly width?: number;
}

const LONGEST_LABEL = 14;

/**
 * Sizes and body on one ruler, in plain ASCII:
 *
 *     [=====]  a range of the chart      (.....)  one inferred from a single length
 *     <=====   no lower end              |--*--|  the body: mean and coverage interval
 *
 * No line is longer than `width`, and equal lengths stand in equal columns in every row.
 */
export function drawRuler(ruler: Ruler): string[] {
  const rows = [...ruler.sizes, ...ruler.bodies];
  const labels = rows.map((row) => shorten(row.label, LONGEST_LABEL));
  const left = Math.max(...labels.map(displayWidth), displayWidth(ruler.unit));
  const right = Math.max(...rows.map((row) => displayWidth(row.note)));
  const columns = Math.max(20, (ruler.width ?? PAGE_WIDTH) - left - right - 6);
  const scale = makeScale(lengthsOf(ruler), ruler.unit, columns);

  const line = (label: string, drawn: string, note: string): string =>
    `  ${padEnd(label, left)}  ${padEnd(drawn, columns)}  ${padStart(note, right)}`.trimEnd();
  return [
    line(ruler.unit, drawLabels(scale, ruler.unit), ""),
    line("", drawMarks(scale), ""),
    ...ruler.sizes.map((size, index) => line(labels[index] ?? "", drawSize(scale, size), size.note)),
    ...ruler.bodies.map((body, index) =>
      line(labels[ruler.sizes.length + index] ?? "", drawBody(scale, body), body.note),
    ),
  ];
}

/** Every length that has to be on the ruler. A chart without any finite end leaves the body's alone. */
function lengthsOf(ruler: Ruler): number[] {
  const ends = ruler.sizes.flatMap((size) => [size.interval.from, size.interval.to]);
  const bodies = ruler.bodies.flatMap((body) => [body.lowerMm, body.upperMm]);
  const finite = [...ends, ...bodies].filter(Number.isFinite);
  return finite.length === 0 ? [0, 100] : finite;
}

function drawLabels(scale: Scale, unit: "cm" | "in"): string {
  const cells = blank(scale.columns);
  let free = 0;
  for (const mark of marksOf(scale)) {
    const text = String(Number((mark / (unit === "cm" ? 10 : 25.4)).toFixed(2)));
    const centred = columnOf(scale, mark) - Math.floor((text.length - 1) / 2);
    // No label leaves the ruler, and two never run into each other.
    const start = Math.max(0, Math.min(centred, scale.columns - text.length));
    if (start < free) continue;
    for (const [offset, character] of [...text].entries()) cells[start + offset] = character;
    free = start + text.length + 1;
  }
  return cells.join("").trimEnd();
}

function drawMarks(scale: Scale): string {
  const cells = Array.from({ length: scale.columns }, () => "-");
  for (const mark of marksOf(scale)) cells[columnOf(scale, mark)] = "+";
  return cells.join("");
}

function drawSize(scale: Scale, size: RulerSize): string {
  const { from, to } = size.interval;
  const [open, fill, close] = size.inferred ? (["(", ".", ")"] as const) : (["[", "=", "]"] as const);
  const first = Number.isFinite(from) ? columnOf(scale, from) : 0;
  const last = Number.isFinite(to) ? columnOf(scale, to) : scale.columns - 1;
  if (first === last) return `${" ".repeat(first)}|`;
  const cells = blank(scale.columns);
  cells.fill(fill, first, last);
  cells[first] = Number.isFinite(from) ? open : "<";
  cells[last] = Number.isFinite(to) ? close : ">";
  return cells.join("").trimEnd();
}

function drawBody(scale: Scale, body: RulerBody): string {
  const cells = blank(scale.columns);
  const first = columnOf(scale, body.lowerMm);
  const last = columnOf(scale, body.upperMm);
  cells.fill("-", first, last);
  cells[first] = "|";
  cells[last] = "|";
  cells[columnOf(scale, body.meanMm)] = "*";
  return cells.join("").trimEnd();
}

function blank(length: number): string[] {
  return Array.from({ length }, () => " ");
}
