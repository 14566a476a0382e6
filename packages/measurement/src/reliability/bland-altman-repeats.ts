import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareQuantile, studentTQuantile } from "@tapewise/statistics";
import { type BlandAltmanOptions, requireConventions } from "./bland-altman.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";
import type { IntervalEstimate } from "./interval-estimate.ts";
import { requireValue } from "./require-table.ts";

/** One subject's readings in the two ways. */
export interface RepeatedPair {
  readonly first: readonly number[];
  readonly second: readonly number[];
}

/** Conventions, and what stays the same. */
export interface BlandAltmanRepeatsOptions extends Omit<BlandAltmanOptions, "method"> {
  /**
   * `constant`: a subject's true value is the same in all readings (a length of the body). `varying`: it may change
   * from one pair to the next (blood pressure), and the readings of a pair belong together.
   */
  readonly trueValue: "constant" | "varying";
}

/** How single readings in two ways agree, seen in repeated ones. Differences are first less second. */
export interface BlandAltmanRepeats {
  readonly subjects: number;
  readonly bias: IntervalEstimate;
  readonly biasError: number;
  /** Of the difference of two single readings. */
  readonly differenceSd: number;
  readonly lowerLimit: IntervalEstimate;
  readonly upperLimit: IntervalEstimate;
  /** Variance of a single reading about the subject's own mean in that way. Only with a constant true value. */
  readonly withinVariances?: readonly [first: number | undefined, second: number | undefined];
  /** Variance of differences between subjects and within them. Only with a varying true value. */
  readonly differenceVariances?: readonly [between: number, within: number];
  readonly multiplier: number;
  readonly confidence: number;
}

/** A part of the variance of a difference: a mean square, its weight and its degrees of freedom. */
interface Part {
  readonly weight: number;
  readonly meanSquare: number;
  readonly freedom: number;
}

/**
 * Bias and limits of agreement for single readings from several readings of each subject (J. M. Bland & D. G.
 * Altman, 1999, Statistical Methods in Medical Research 8, 135–160, section 5; 2007, Journal of Biopharmaceutical
 * Statistics 17, 571–582). To take repeats for separate pairs, or their means for single readings, gives limits that
 * are too narrow.
 *
 * - `constant`: σ² = s²(mean differences) + (1 − mean 1/m₁) s²w₁ + (1 − mean 1/m₂) s²w₂; the numbers of readings may
 *   differ between subjects and ways. The bias is the mean of the subjects' mean differences.
 * - `varying`: one-way analysis of variance of the differences, σ² = (MSB − MSW)/m₀ + MSW. The bias is
 *   the mean of all differences.
 *
 * Intervals by the method of variance estimates recovery (G. Y. Zou, 2013, Statistical Methods in Medical Research
 * 22, 630–642).
 *
 * @throws {@link InvalidArgumentError} when there are fewer than three subjects, a list is empty or holds
 * something else than numbers, pairs are not complete for `varying`, no subject has a repeat there, or nothing scatters.
 *
 * @example
 * ```ts
 * import { blandAltmanRepeats } from "@tapewise/measurement";
 * const subjects = [
 *   { first: [431, 433], second: [428, 429] },
 *   { first: [446, 444], second: [447] },
 *   { first: [412, 416], second: [408, 411] },
 *   { first: [455], second: [453, 456] },
 * ];
 * const { bias, differenceSd } = blandAltmanRepeats(subjects, { trueValue: "constant" });
 * bias.value; // => 1.75
 * differenceSd.toFixed(2); // => "3.33"
 * ```
 */
export function blandAltmanRepeats(
  subjects: readonly RepeatedPair[],
  options: BlandAltmanRepeatsOptions,
): BlandAltmanRepeats {
  const { multiplier, confidence } = requireConventions(options);
  const { trueValue } = options;
  if (trueValue !== "constant" && trueValue !== "varying") {
    throw new InvalidArgumentError("options.trueValue", trueValue, "constant or varying");
  }
  requireSubjects(subjects, trueValue === "varying");
  const seen = trueValue === "constant" ? seeConstant(subjects) : seeVarying(subjects);
  const parts = seen.parts.filter(({ weight }) => weight > 0);
  const variance = parts.reduce((sum, { weight, meanSquare }) => sum + weight * meanSquare, 0);
  if (!(variance > 0))
    throw new InvalidArgumentError("subjects", subjects, "readings whose differences are not all the same");
  const differenceSd = Math.sqrt(variance);
  const reach = studentTQuantile((1 + confidence) / 2, subjects.length - 1) * seen.biasError;
  // Bounds of the variance, recovered from those of its parts.
  const bound = (share: number): number =>
    Math.hypot(
      ...parts.map(
        ({ weight, meanSquare, freedom }) =>
          weight * meanSquare * (freedom / chiSquareQuantile(share, freedom) - 1),
      ),
    );
  const least = Math.sqrt(Math.max(variance - bound((1 + confidence) / 2), 0));
  const most = Math.sqrt(variance + bound((1 - confidence) / 2));
  const inwards = Math.hypot(reach, multiplier * (differenceSd - least));
  const outwards = Math.hypot(reach, multiplier * (most - differenceSd));
  const away = multiplier * differenceSd;
  const { bias } = seen;
  return {
    subjects: subjects.length,
    bias: { value: bias, lower: bias - reach, upper: bias + reach },
    biasError: seen.biasError,
    differenceSd,
    lowerLimit: { value: bias - away, lower: bias - away - outwards, upper: bias - away + inwards },
    upperLimit: { value: bias + away, lower: bias + away - inwards, upper: bias + away + outwards },
    ...seen.variances,
    multiplier,
    confidence,
  };
}

interface Seen {
  readonly bias: number;
  readonly biasError: number;
  readonly parts: readonly Part[];
  readonly variances: Pick<BlandAltmanRepeats, "withinVariances" | "differenceVariances">;
}

function seeConstant(subjects: readonly RepeatedPair[]): Seen {
  const n = subjects.length;
  const differences = subjects.map(({ first, second }) => compensatedMean(first) - compensatedMean(second));
  const bias = compensatedMean(differences);
  const between = compensatedSum(differences.map((difference) => (difference - bias) ** 2)) / (n - 1);
  const within = (way: "first" | "second"): Part => {
    const lists = subjects.map((subject) => subject[way]);
    const squares = compensatedSum(lists.flatMap(squaresAbout));
    const freedom = lists.reduce((sum, list) => sum + list.length - 1, 0);
    const share = lists.reduce((sum, list) => sum + 1 / list.length, 0) / n;
    return { weight: 1 - share, meanSquare: freedom > 0 ? squares / freedom : 0, freedom };
  };
  const [first, second] = [within("first"), within("second")];
  const variance = ({ freedom, meanSquare }: Part): number | undefined =>
    freedom > 0 ? meanSquare : undefined;
  return {
    bias,
    biasError: Math.sqrt(between / n),
    parts: [{ weight: 1, meanSquare: between, freedom: n - 1 }, first, second],
    variances: { withinVariances: [variance(first), variance(second)] },
  };
}

function seeVarying(subjects: readonly RepeatedPair[]): Seen {
  const n = subjects.length;
  const lists = subjects.map(({ first, second }) => first.map((value, i) => value - (second[i] ?? 0)));
  const all = lists.flat();
  const bias = compensatedMean(all);
  const means = lists.map(compensatedMean);
  const between =
    compensatedSum(lists.map((list, i) => list.length * ((means[i] ?? 0) - bias) ** 2)) / (n - 1);
  const freedom = all.length - n;
  const within = compensatedSum(lists.flatMap(squaresAbout)) / freedom;
  const squaredCounts = lists.reduce((sum, list) => sum + list.length ** 2, 0);
  const each = (all.length - squaredCounts / all.length) / (n - 1);
  const variance = Math.max((between - within) / each, 0);
  // Where subjects do not differ beyond chance, all differences are alike and make one mean square.
  const pooled = (between * (n - 1) + within * freedom) / (n - 1 + freedom);
  const parts: readonly Part[] =
    variance > 0
      ? [
          { weight: 1 / each, meanSquare: between, freedom: n - 1 },
          { weight: 1 - 1 / each, meanSquare: within, freedom },
        ]
      : [{ weight: 1, meanSquare: pooled, freedom: n - 1 + freedom }];
  const single = variance > 0 ? within : pooled;
  return {
    bias,
    biasError: Math.sqrt((variance * squaredCounts) / all.length ** 2 + single / all.length),
    parts,
    variances: { differenceVariances: [variance, single] },
  };
}

function squaresAbout(list: readonly number[]): readonly number[] {
  const own = compensatedMean(list);
  return list.map((value) => (value - own) ** 2);
}

function requireSubjects(subjects: readonly RepeatedPair[], paired: boolean): void {
  if (!(Array.isArray(subjects) && subjects.length >= 3)) {
    throw new InvalidArgumentError("subjects", subjects, "readings of three subjects or more");
  }
  for (const [i, subject] of subjects.entries()) {
    for (const way of ["first", "second"] as const) {
      const list: unknown = subject[way];
      if (!(Array.isArray(list) && list.length > 0)) {
        throw new InvalidArgumentError(`subjects[${i}].${way}`, list, "a list of one reading or more");
      }
      for (const [j, value] of list.entries()) requireValue(`subjects[${i}].${way}[${j}]`, value);
    }
    if (paired && subject.first.length !== subject.second.length) {
      throw new InvalidArgumentError(
        `subjects[${i}].second`,
        subject.second,
        `${subject.first.length} readings, one for each of the first`,
      );
    }
  }
  if (paired && !subjects.some(({ first }) => first.length > 1)) {
    throw new InvalidArgumentError("subjects", subjects, "a subject with two pairs or more");
  }
}
