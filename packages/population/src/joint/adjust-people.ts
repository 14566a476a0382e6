import { InvalidArgumentError } from "@tapewise/outcome";

/** How far off a known value may be where everybody has the same one: rounding. */
const ROUNDING = 1e-6;

/**
 * Moves everybody along the weighted regression lines on the known variables, one after the other, so that all
 * have the known values and keep their residuals. One after the other comes to the same as all at once.
 *
 * @throws {@link InvalidArgumentError} when a known variable has no spread left and another value.
 */
export function adjustPeople(
  people: readonly (readonly number[])[],
  weights: readonly number[],
  known: readonly (readonly [place: number, value: number])[],
): readonly (readonly number[])[] {
  let moved = people;
  for (const [place, value] of known) {
    const all = moved;
    const over = (f: (person: readonly number[]) => number): number =>
      all.reduce((sum, person, n) => sum + (weights[n] ?? 0) * f(person), 0);
    const at = (person: readonly number[], i: number): number => person[i] ?? 0;
    const size = all[0]?.length ?? 0;
    const total = over(() => 1);
    const mean = Array.from({ length: size }, (_, i) => over((person) => at(person, i)) / total);
    const centre = mean[place] ?? 0;
    const variance = over((person) => (at(person, place) - centre) ** 2) / total;
    const original = people.reduce(
      (widest, person) => Math.max(widest, Math.abs(at(person, place) - value)),
      0,
    );
    if (variance <= (1e-8 * original) ** 2) {
      if (Math.abs(value - centre) <= ROUNDING * Math.max(1, Math.abs(centre))) continue;
      throw new InvalidArgumentError("known", value, `${centre}, the only value that there is`);
    }
    const slopes = mean.map((middle, i) => {
      const covariance = over((person) => (at(person, i) - middle) * (at(person, place) - centre)) / total;
      return covariance / variance;
    });
    moved = all.map((person) =>
      person.map((own, i) => (i === place ? value : own + (slopes[i] ?? 0) * (value - at(person, place)))),
    );
  }
  return moved;
}
