import type { ToldUnit } from "../telling/told.ts";
import { millimetresIn } from "../telling/write-figures.ts";

/** Lengths in mm to places of a picture, with marks at round figures of the unit. */
export interface PlotScale {
  readonly at: (mm: number) => number;
  readonly marks: readonly { readonly mm: number; readonly text: string }[];
}

/** A scale from `low` to `high` that holds all lengths with a little air, with about `most` marks. */
export function plotScale(
  lengths: readonly number[],
  unit: ToldUnit,
  [low, high]: readonly [low: number, high: number],
  most: number,
): PlotScale {
  const one = millimetresIn(unit);
  const least = lengths.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const greatest = lengths.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const air = Math.max((greatest - least) * 0.05, 1);
  const [from, to] = [least - air, greatest + air];
  const raw = (to - from) / one / most;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5].find((each) => each * power >= raw) ?? 10) * power;
  const decimals = Math.max(0, -Math.floor(Math.log10(step)));
  const first = Math.ceil(from / (step * one));
  const last = Math.floor(to / (step * one));
  return {
    at: (mm) => low + ((high - low) * (mm - from)) / (to - from),
    marks: Array.from({ length: last - first + 1 }, (_, k) => {
      const value = (first + k) * step;
      return { mm: value * one, text: (value || 0).toFixed(decimals) };
    }),
  };
}
