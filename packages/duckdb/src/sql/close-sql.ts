import type { fit } from "tapewise";
import { joinTerms, writeNumber } from "./write-sql.ts";

/** Figures of the two ways differ by less: probabilities, and expected misfits in mm. */
const CLOSE = 1e-12;
const CLOSE_MM = 1e-11;
/** Steps of a thousand-millionth, so that figures farther apart cannot round to the same one. */
const STEP = 1e-9;

/** Whether a size and the one that stands before it could change places by the last digits of a figure. */
export function isCloseToNext({ policy }: fit.ColumnPlan): string {
  const isNear = (column: string, next: string, margin: number) => {
    const rounds = joinTerms(
      [column, next].map((one) => isAtHalf(one, margin)),
      "OR",
      "1 = 0",
    );
    return `(ABS(${column} - ${next}) < ${writeNumber(2 * STEP)} AND (${rounds}))`;
  };
  const reasons = [
    `ABS(probability - ${writeNumber(policy.hopelessProbability)}) < ${writeNumber(CLOSE)}`,
    isNear("probability", "next_probability", CLOSE),
    isNear("expected_misfit_mm", "next_misfit", CLOSE_MM),
  ];
  return `CASE WHEN ${reasons.join("\n    OR ")} THEN 1 ELSE 0 END`;
}

/** Whether a figure lies so near to the middle between two steps that it may be rounded either way. */
function isAtHalf(column: string, margin: number): string {
  const rounded = (sign: string) => `FLOOR((${column} ${sign} ${writeNumber(margin)}) * 1E9 + 5E-1)`;
  return `${rounded("-")} <> ${rounded("+")}`;
}

/** More than everything, by so much that rounding does not reach it: two sizes then share bodies. */
export const SURE = "1.000000001E0";

/** The places in the order of the sizes, from 1. */
export function placesOf({ sizes }: fit.ColumnPlan): readonly number[] {
  return sizes.map((_, k) => k + 1);
}

/** The chances to lie beyond a size, in every dimension. */
export function endsOf({ dimensions }: fit.ColumnPlan): readonly string[] {
  return dimensions.flatMap((_, k) => [`below${k + 1}`, `above${k + 1}`]);
}

/** Whether a figure of a person could turn the pick or the verdict by its last digits. */
export function isCloseToOther(plan: fit.ColumnPlan): string {
  const { fitProbability, tieLoss } = plan.policy;
  const fitting = writeNumber(fitProbability);
  const loss = writeNumber(tieLoss);
  const at = (figure: string, limit: string) => `ABS(${figure} - ${limit}) < ${writeNumber(CLOSE)}`;
  const mayTie = plan.tables.setsLength ? "(has_build = 1 OR best_harness = 1)" : "best_harness = 1";
  const anyPlace = (write: (probability: string, place: number) => string) =>
    placesOf(plan).map((place) => write(`probability${place}`, place));
  const reasons = [
    "is_near = 1",
    at("pick_probability", fitting),
    ...anyPlace((own) => at(own, fitting)),
    ...anyPlace((own) => `(${mayTie} AND ${at(own, `(probability1 - ${loss})`)})`).slice(1),
    ...anyPlace(
      (own, place) =>
        `(pick_place <> ${place} AND (${at(`${own} + pick_probability`, SURE)} OR ${at(own, `(pick_probability - ${loss})`)}))`,
    ),
    ...endsOf(plan).map((end) => `(pick_probability < ${fitting} AND ${at(`least_${end}`, fitting)})`),
  ];
  return `CASE WHEN ${reasons.join("\n    OR ")} THEN 1 ELSE 0 END`;
}
