import { createRandom } from "@tapewise/statistics";
import type { StudiedPerson } from "./people.ts";
import type { ReadingSetting } from "./settings.ts";

/** A body and the marks that were read from it. */
export interface Trial {
  readonly trueMm: number;
  /** Readings in steps of the rounding. */
  readonly marks: readonly number[];
}

/**
 * One person's true length and readings: the error that all readings share, the error of each, and rounding to
 * the nearest mark. Depends on seed, person, repeat, error and rounding alone, so that two readings are the
 * first two of three and every rule sees the same ones.
 *
 * Heights of the survey are whole millimetres, so that a difference of two is off by two errors, each uniform
 * within half a millimetre. With `dither` they are put back. Without it lengths are whole millimetres, of
 * which a closed interval from 410 to 460 mm holds 51: a millimetre more than it is long.
 */
export function drawTrial(
  person: StudiedPerson,
  { error, rounding, count }: ReadingSetting,
  repeat: number,
  seed: number,
  dither: boolean,
): Trial {
  const own = createRandom(seed).fork(person.id).fork(repeat);
  const body = own.fork("body");
  const spread = dither ? body.uniform() - body.uniform() : 0;
  const trueMm = person.torsoMm + spread;
  const random = own.fork(error.name).fork(rounding.name);
  const shared = error.biasMm * random.normal();
  const marks = Array.from({ length: count }, () =>
    Math.round((trueMm + shared + error.noiseMm * random.normal()) / rounding.stepMm),
  );
  return { trueMm, marks };
}
