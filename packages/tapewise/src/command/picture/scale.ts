/** Lengths of a unit, in mm, that a ruler may put between two labelled marks: exact and easy to read. */
const STEPS: Readonly<Record<"cm" | "in", readonly number[]>> = {
  cm: [1, 2, 5, 10, 20, 50].map((cm) => cm * 10),
  in: [0.5, 1, 2, 5, 10, 20].map((inches) => inches * 25.4),
};

/** The line that lengths in mm are drawn on, one character a step. */
export interface Scale {
  readonly fromMm: number;
  readonly toMm: number;
  readonly stepMm: number;
  readonly columns: number;
}

/**
 * A scale that holds all of `lengths` with a little air on both sides, its ends on labelled marks.
 * At least six characters lie between two marks where the largest step allows it.
 */
export function makeScale(lengths: readonly number[], unit: "cm" | "in", columns: number): Scale {
  const low = Math.min(...lengths);
  const high = Math.max(...lengths);
  const air = Math.max((high - low) * 0.04, 5);
  const most = Math.max(1, Math.floor((columns - 1) / 6));
  let stepMm = 0;
  for (const step of stepsOf(unit)) {
    stepMm = step;
    if (marksBetween(low - air, high + air, step) <= most) break;
  }
  const fromMm = Math.floor((low - air) / stepMm) * stepMm;
  const toMm = Math.ceil((high + air) / stepMm) * stepMm;
  return { fromMm, toMm, stepMm, columns };
}

/** The character that stands for a length: 0 is the first one. Lengths off the scale go to its ends. */
export function columnOf(scale: Scale, mm: number): number {
  const share = (mm - scale.fromMm) / (scale.toMm - scale.fromMm);
  return Math.round(Math.min(1, Math.max(0, share)) * (scale.columns - 1));
}

/** Where the labelled marks are, in mm. */
export function marksOf(scale: Scale): readonly number[] {
  const count = Math.round((scale.toMm - scale.fromMm) / scale.stepMm);
  return Array.from({ length: count + 1 }, (_, index) => scale.fromMm + index * scale.stepMm);
}

/** The usual steps, then ever larger ones, so that any two lengths can be drawn. */
function* stepsOf(unit: "cm" | "in"): Generator<number> {
  yield* STEPS[unit];
  for (let step = STEPS[unit].at(-1) ?? 1; Number.isFinite(step); ) {
    step *= 10;
    yield step;
  }
}

function marksBetween(low: number, high: number, step: number): number {
  return Math.ceil(high / step) - Math.floor(low / step);
}
