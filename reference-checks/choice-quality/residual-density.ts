import { createRandom, normalPdf, summarise } from "@tapewise/statistics";
import type { Density } from "./exact-posterior.ts";
import type { StudiedPerson } from "./people.ts";

/** Grid of the tabulated density, in mm: finer than any chart. */
const GRID_MM = 0.25;
const REACH_MM = 200;

/**
 * For each person a density of the torso length that knows nothing of this person: a straight line on stature
 * through the people of the same cut in the other half of the study, and what that line leaves, smoothed by a
 * normal kernel (Silverman 1986, eq. 3.28: bandwidth 1.06 σ n^−1/5).
 */
export function otherHalfDensities(
  people: readonly StudiedPerson[],
  seed: number,
): (person: StudiedPerson) => Density {
  const halfOf = ({ id }: StudiedPerson) => createRandom(seed).fork("half").fork(id).integer(0, 1);
  const groups = new Map<string, StudiedPerson[]>();
  for (const person of people) {
    const key = `${person.cut} ${1 - halfOf(person)}`;
    groups.set(key, [...(groups.get(key) ?? []), person]);
  }
  const models = new Map([...groups].map(([key, members]) => [key, residualModel(members)]));
  return (person) => {
    const model = models.get(`${person.cut} ${halfOf(person)}`);
    if (model === undefined) throw new Error("nobody is left in the other half of the people");
    return model(person.statureMm);
  };
}

function residualModel(people: readonly StudiedPerson[]): (statureMm: number) => Density {
  const stature = summarise(people.map(({ statureMm }) => statureMm));
  const torso = summarise(people.map(({ torsoMm }) => torsoMm));
  let product = 0;
  let square = 0;
  for (const { statureMm, torsoMm } of people) {
    product += (statureMm - stature.mean) * (torsoMm - torso.mean);
    square += (statureMm - stature.mean) ** 2;
  }
  const slope = square === 0 ? 0 : product / square;
  const expected = (statureMm: number) => torso.mean + slope * (statureMm - stature.mean);
  const residuals = people.map(({ statureMm, torsoMm }) => torsoMm - expected(statureMm));
  const bandwidth = 1.06 * (summarise(residuals).sd ?? 1) * people.length ** -0.2;
  const table = Float64Array.from({ length: (2 * REACH_MM) / GRID_MM + 1 }, (_, i) => {
    const at = i * GRID_MM - REACH_MM;
    return residuals.reduce((sum, residual) => sum + normalPdf((at - residual) / bandwidth), 0);
  });
  return (statureMm) => {
    const centre = expected(statureMm) - REACH_MM;
    return (lengthMm) => {
      const place = (lengthMm - centre) / GRID_MM;
      const i = Math.floor(place);
      const low = table[i] ?? 0;
      return low + ((table[i + 1] ?? 0) - low) * (place - i);
    };
  };
}
