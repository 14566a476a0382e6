import { normalPdf, normalUpperTail } from "@tapewise/statistics";

/** Beyond so many standard deviations less than 10⁻¹⁸ is left. */
export const FARTHEST = 9;

const CELLS_PER_SD = 32;
/** The tail at the centre of a cell and seven terms of its Taylor series. */
const STRIDE = 8;

let table: Float64Array | undefined;

/**
 * The upper tail of the standard normal distribution and minus its slope, the density, in cells of 1/32:
 * Q(c + d) = Q(c) − d (a₁ + d (a₂ + …)) with aₙ = φ(c) (−1)ⁿ⁻¹ Heₙ₋₁(c) / n!. What the series leaves out is below
 * 10⁻¹⁴ of the density.
 */
export function normalTable(): Float64Array {
  if (table !== undefined) return table;
  const made = new Float64Array((FARTHEST * CELLS_PER_SD + 1) * STRIDE);
  for (let cell = 0; cell * STRIDE < made.length; cell += 1) {
    const centre = cell / CELLS_PER_SD;
    made[cell * STRIDE] = normalUpperTail(centre);
    let [hermite, before] = [1, 0];
    let scale = normalPdf(centre);
    for (let n = 1; n < STRIDE; n += 1) {
      scale /= n;
      made[cell * STRIDE + n] = scale * hermite;
      [hermite, before] = [centre * hermite - (n - 1) * before, hermite];
      scale = -scale;
    }
  }
  table = made;
  return made;
}

/**
 * P(Z > z) for 0 ≤ z < {@link FARTHEST} into `out[0]` and the density into `out[1]`, both to about 10⁻¹⁵.
 */
export function readNormal(cells: Float64Array, z: number, out: Float64Array): void {
  const cell = (z * CELLS_PER_SD + 0.5) | 0;
  const d = z - cell / CELLS_PER_SD;
  const at = cell * STRIDE;
  const a1 = cells[at + 1] as number;
  const a2 = cells[at + 2] as number;
  const a3 = cells[at + 3] as number;
  const a4 = cells[at + 4] as number;
  const a5 = cells[at + 5] as number;
  const a6 = cells[at + 6] as number;
  const a7 = cells[at + 7] as number;
  out[0] = (cells[at] as number) - d * (a1 + d * (a2 + d * (a3 + d * (a4 + d * (a5 + d * (a6 + d * a7))))));
  out[1] = a1 + d * (2 * a2 + d * (3 * a3 + d * (4 * a4 + d * (5 * a5 + d * (6 * a6 + d * (7 * a7))))));
}

/** P(Z ≤ z), to about 10⁻¹⁵. */
export function normalBelow(cells: Float64Array, z: number): number {
  const size = Math.abs(z);
  if (!(size < FARTHEST)) return z > 0 ? 1 : 0;
  const cell = (size * CELLS_PER_SD + 0.5) | 0;
  const d = size - cell / CELLS_PER_SD;
  const at = cell * STRIDE;
  const tail =
    (cells[at] as number) -
    d *
      ((cells[at + 1] as number) +
        d *
          ((cells[at + 2] as number) +
            d *
              ((cells[at + 3] as number) +
                d *
                  ((cells[at + 4] as number) +
                    d *
                      ((cells[at + 5] as number) +
                        d * ((cells[at + 6] as number) + d * (cells[at + 7] as number)))))));
  return z > 0 ? 1 - tail : tail;
}
