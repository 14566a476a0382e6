import { InvalidArgumentError } from "@tapewise/outcome";
import { describeUnit } from "./describe-unit.ts";
import { divideRounded } from "./divide-rounded.ts";
import type { LengthUnit } from "./length-unit.ts";
import { type Millimetres, millimetres } from "./millimetres.ts";
import { exactDecimal, nearestDouble } from "./ratio.ts";
import type { RoundingRule } from "./rounding-rule.ts";

/** Equal steps from zero on: `{ to: "in", step: 1 / 8 }` is every eighth of an inch. */
export interface LengthGrid {
  readonly to: LengthUnit;
  /** The width of a step in that unit, above zero. Like every number here it stands for its printed decimal. */
  readonly step: number;
}

/**
 * The step of a grid that a length belongs to by a named rule: the double nearest to that step.
 *
 * Length and step stand for the decimals that JavaScript prints, so a tie is a tie where people see one:
 * 2.675 mm lies halfway between 2.67 and 2.68. There is no default rule, because readers of a tape,
 * rounders of charts and authors of standards differ.
 *
 * @throws {@link InvalidArgumentError} when the length is not finite, the step not above zero, or the
 * unit or the rule unknown.
 *
 * @example
 * ```ts
 * import { millimetres, roundLength } from "@tapewise/units";
 * roundLength(millimetres(2.675), { to: "mm", step: 0.01 }, "half-even"); // => 2.68
 * roundLength(millimetres(466), { to: "in", step: 1 / 8 }, "half-even"); // => 466.725
 * roundLength(millimetres(435), { to: "cm", step: 1 }, "half-even"); // => 440
 * ```
 */
export function roundLength(mm: Millimetres, grid: LengthGrid, rule: RoundingRule): Millimetres {
  const nanometres = BigInt(describeUnit(grid.to).nanometres);
  if (!Number.isFinite(mm)) throw new InvalidArgumentError("mm", mm, "a finite number");
  if (!(grid.step > 0 && grid.step < Number.POSITIVE_INFINITY)) {
    throw new InvalidArgumentError("grid.step", grid.step, "a finite number above zero");
  }
  const length = exactDecimal(mm);
  const step = exactDecimal(grid.step);
  const top = step.n * nanometres;
  const bottom = step.d * 1_000_000n;
  const steps = divideRounded(length.n * bottom, length.d * top, rule);
  return millimetres(nearestDouble(steps * top, bottom));
}
