import type { ShownUnit } from "./lengths.ts";

const MM: Readonly<Record<ShownUnit, number>> = { cm: 10, in: 25.4 };

/** A tick of the axis: where, in mm, how long, and the number at it. */
export interface Tick {
  readonly mm: number;
  readonly size: "short" | "middle" | "long";
  readonly label?: string;
}

/** An axis in mm, from one end to the other. */
export interface Scale {
  readonly fromMm: number;
  readonly toMm: number;
  readonly ticks: readonly Tick[];
  /** The place of a length, from 0 to 1; what lies beyond an end is at the end. */
  readonly at: (mm: number) => number;
}

/** Most numbers that fit on a narrow screen. */
const MOST_LABELS = 9;

/** Steps between numbers, in units, and into how many parts a step is cut. */
const STEPS: readonly (readonly [step: number, parts: number])[] = [
  [1, 2],
  [2, 2],
  [5, 5],
  [10, 10],
  [20, 10],
  [50, 10],
  [100, 10],
  [200, 10],
  [500, 10],
  [1000, 10],
];

/** The axis that holds all the lengths, with a little room at both ends. */
export function rulerScale(lengthsMm: readonly number[], unit: ShownUnit): Scale {
  const finite = lengthsMm.filter(Number.isFinite);
  const least = finite.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = finite.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const per = MM[unit];
  const [low, high] = finite.length === 0 ? [0, 10 * per] : [least, most];
  const room = Math.max((high - low) * 0.06, per);
  const span = (high - low + 2 * room) / per;
  const [step, parts] = STEPS.find(([size]) => span / size <= MOST_LABELS) ?? [
    2 ** Math.ceil(Math.log2(span / MOST_LABELS)),
    4,
  ];
  const minor = step / parts;
  // Ends lie on minor ticks, as those of a real rule do.
  const first = Math.floor((low - room) / per / minor);
  const last = Math.ceil((high + room) / per / minor);
  const fromMm = first * minor * per;
  const toMm = last * minor * per;
  const ticks: Tick[] = [];
  for (let index = first; index <= last; index += 1) {
    const isLong = index % parts === 0;
    const isMiddle = parts % 2 === 0 && index % (parts / 2) === 0;
    const mm = index * minor * per;
    ticks.push({
      mm,
      size: isLong ? "long" : isMiddle ? "middle" : "short",
      ...(isLong && index >= 0 ? { label: String(Math.round(index * minor)) } : {}),
    });
  }
  const width = toMm - fromMm;
  return { fromMm, toMm, ticks, at: (mm) => Math.min(1, Math.max(0, (mm - fromMm) / width)) };
}
