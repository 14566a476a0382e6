import { once } from "node:events";
import { createWriteStream } from "node:fs";
import { statistics } from "tapewise";

/** The error of every reading, stated, so that what is believed is normal: a closed form. */
export const ERROR = { biasMm: 5, repeatMm: 6, resolutionMm: 0 } as const;

/** Of so many people one stands on an end of a size or between two, where ties are. */
const ON_A_TIE = 50;
const LINES_AT_ONCE = 20_000;

/**
 * Writes so many invented people, one JSON line each: two to four readings of the back and of the girth in whole
 * millimetres. The same seed gives the same people.
 */
export async function writePeople(file: string, count: number, seed: number, ends: Ends): Promise<void> {
  const random = statistics.createRandom(seed);
  const choose = (list: readonly number[]): number => list[Math.floor(random.uniform() * list.length)] ?? 0;
  const onTie = (list: readonly number[]): number => (choose(list) + choose(list)) / 2;
  const to = createWriteStream(file);
  let lines: string[] = [];
  for (let k = 0; k < count; k += 1) {
    const isOnTie = k % ON_A_TIE === 0;
    const torso = isOnTie ? onTie(ends.torso) : 425 + 32 * random.normal();
    const girth = isOnTie ? onTie(ends.girth) : 900 + 80 * random.normal();
    const readings = 2 + Math.floor(3 * random.uniform());
    const read = (mm: number): readonly string[] => {
      if (isOnTie) return [`${mm} mm`, `${mm} mm`];
      const own = mm + ERROR.biasMm * random.normal();
      return Array.from(
        { length: readings },
        () => `${Math.round(own + ERROR.repeatMm * random.normal())} mm`,
      );
    };
    lines.push(
      JSON.stringify({
        id: `p${k + 1}`,
        error: ERROR,
        readings: { "torso-length": read(torso), "hip-belt-girth": read(girth) },
      }),
    );
    if (lines.length === LINES_AT_ONCE || k + 1 === count) {
      if (!to.write(`${lines.join("\n")}\n`)) await once(to, "drain");
      lines = [];
    }
  }
  to.end();
  await once(to, "finish");
}

/** The ends of all sizes, in mm. */
export interface Ends {
  readonly torso: readonly number[];
  readonly girth: readonly number[];
}
