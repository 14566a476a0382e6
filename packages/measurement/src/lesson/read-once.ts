import type { Random } from "@tapewise/statistics";
import type { LessonError } from "./lesson-error.ts";

/** What a series starts from: the true length, the bias of everybody and what lasts in this series. */
export function startSeries(lengthMm: number, error: LessonError, random: Random): number {
  const lasting = error.lastingMm === 0 ? 0 : error.lastingMm * random.normal();
  return lengthMm + error.biasMm + lasting;
}

/** By how much a reading slips, 0 for most. */
export function drawSlip({ slip }: LessonError, random: Random): number {
  if (slip === undefined || random.uniform() >= slip.chance) return 0;
  if (slip.direction === "either") return random.uniform() < 0.5 ? -slip.sizeMm : slip.sizeMm;
  return slip.direction === "longer" ? slip.sizeMm : -slip.sizeMm;
}

/** One reading, rounded to the nearest mark. */
export function readOnce(startMm: number, slipMm: number, error: LessonError, random: Random): number {
  const mm = startMm + slipMm + (error.noiseMm === 0 ? 0 : error.noiseMm * random.normal());
  return error.stepMm === 0 ? mm : Math.round(mm / error.stepMm) * error.stepMm;
}
