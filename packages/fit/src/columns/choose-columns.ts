import { InvalidArgumentError } from "@tapewise/outcome";
import { chooseRow } from "./choose-row.ts";
import type { ColumnPlan } from "./column-plan.ts";
import { createRow } from "./column-row.ts";

/**
 * People as columns: matrices have a row for each person and, in it, a number for each dimension of the plan. All
 * lengths are in mm.
 */
export interface PeopleColumns {
  readonly meansMm: Float64Array;
  /** Standard uncertainties; 0 where the length is known. */
  readonly sdsMm: Float64Array;
  /** Degrees of freedom, above 1; without them all beliefs are normal. */
  readonly degreesOfFreedom?: Float64Array;
  /**
   * The uncertainty after each further look that could be taken: for each person and dimension the same number
   * of looks. Without them nobody is told to measure again for it.
   */
  readonly afterLooksMm?: Float64Array;
  /** 1 for people with a feature of build that speaks for the longer harness. */
  readonly hasBuild?: Uint8Array;
  /** 1 for people with a questioned reading in what binds the size. */
  readonly isQuestioned?: Uint8Array;
}

/** What comes out: one number a person, and for the sizes one number a person and size. */
export interface ChoiceColumns {
  /** The position of the picked size among those of the plan. */
  readonly pick: Uint16Array;
  /** The position of the verdict in `columnVerdicts`. */
  readonly verdict: Uint8Array;
  /** The probability that the picked size fits. */
  readonly probability: Float64Array;
  /** A bit for each reason in `columnReasons`. */
  readonly reasons: Int32Array;
  /** 1 where a decision hung on the last digits of a figure, so that `recommend` may settle it the other way. */
  readonly isClose: Uint8Array;
  /** Probability and expected misfit in mm of every size. */
  readonly sizeProbabilities?: Float64Array;
  readonly sizeMisfitsMm?: Float64Array;
}

/**
 * Chooses a size for every person of some columns: the answers of `recommend`, without words. Nothing is
 * allocated for a person. The figures agree with those of `recommend` to about 10⁻¹³.
 *
 * @throws {@link InvalidArgumentError} when a column is not as long as the others ask, or holds a mean that is not
 * finite, an uncertainty (now or after a look) that is below 0 or not finite, degrees of freedom of 1 or less; what was written before stays.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { chooseColumns, createChoiceColumns, safeCompileColumns } from "@tapewise/fit";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Demo" });
 * const plan = safeCompileColumns(chart, { read: ["torso-length"] });
 * const out = createChoiceColumns(2, 2);
 * plan.ok && chooseColumns(plan.value, { meansMm: Float64Array.of(450, 400), sdsMm: Float64Array.of(5, 5) }, out);
 * Array.from(out.pick); // => [1, 0]
 * ```
 */
export function chooseColumns(plan: ColumnPlan, people: PeopleColumns, out: ChoiceColumns): void {
  const dimensions = plan.dimensions.length;
  const sizes = plan.sizes.length;
  const { meansMm, sdsMm, degreesOfFreedom, afterLooksMm, hasBuild, isQuestioned } = people;
  const count = meansMm.length / dimensions;
  const looks = afterLooksMm === undefined || count === 0 ? 0 : afterLooksMm.length / meansMm.length;
  requireColumns(plan, people, out, count, looks);
  const row = createRow(plan, looks);
  const perPerson = dimensions * looks;
  for (let person = 0; person < count; person += 1) {
    for (let dimension = 0; dimension < dimensions; dimension += 1) {
      const at = person * dimensions + dimension;
      const mean = meansMm[at] as number;
      const sd = sdsMm[at] as number;
      const degrees =
        degreesOfFreedom === undefined ? Number.POSITIVE_INFINITY : (degreesOfFreedom[at] as number);
      if (!(Number.isFinite(mean) && sd >= 0 && sd < Number.POSITIVE_INFINITY && degrees > 1)) {
        refuse(at, mean, sd, degrees);
      }
      row.means[dimension] = mean;
      row.sds[dimension] = sd;
      row.degrees[dimension] = degrees;
    }
    if (afterLooksMm !== undefined) {
      for (let k = 0; k < perPerson; k += 1) {
        const after = afterLooksMm[person * perPerson + k] as number;
        if (!(after >= 0 && after < Number.POSITIVE_INFINITY)) refuseLook(person * perPerson + k, after);
        row.looks[k] = after;
      }
    }
    row.hasBuild = hasBuild?.[person] === 1;
    row.isOpen = isQuestioned?.[person] === 1;
    chooseRow(row);
    out.pick[person] = row.pick;
    out.verdict[person] = row.verdict;
    out.probability[person] = row.probabilities[row.pick] as number;
    out.reasons[person] = row.reasons | (plan.tables.standing[row.pick] as number);
    out.isClose[person] = row.isClose ? 1 : 0;
    if (out.sizeProbabilities !== undefined) {
      for (let k = 0; k < sizes; k += 1) {
        out.sizeProbabilities[person * sizes + k] = row.probabilities[k] as number;
      }
    }
    if (out.sizeMisfitsMm !== undefined) {
      for (let k = 0; k < sizes; k += 1) out.sizeMisfitsMm[person * sizes + k] = row.misfits[k] as number;
    }
  }
}

/**
 * Columns for the answers of so many people on a chart of so many sizes.
 *
 * @example
 * ```ts
 * import { createChoiceColumns } from "@tapewise/fit";
 * createChoiceColumns(3, 2).sizeProbabilities?.length; // => 6
 * ```
 */
export function createChoiceColumns(people: number, sizes: number): ChoiceColumns {
  return {
    pick: new Uint16Array(people),
    verdict: new Uint8Array(people),
    probability: new Float64Array(people),
    reasons: new Int32Array(people),
    isClose: new Uint8Array(people),
    sizeProbabilities: new Float64Array(people * sizes),
    sizeMisfitsMm: new Float64Array(people * sizes),
  };
}

function refuse(at: number, mean: number, sd: number, degrees: number): never {
  if (!Number.isFinite(mean)) throw new InvalidArgumentError(`meansMm[${at}]`, mean, "a finite length");
  if (!(Number.isFinite(sd) && sd >= 0)) throw new InvalidArgumentError(`sdsMm[${at}]`, sd, "0 or more");
  throw new InvalidArgumentError(`degreesOfFreedom[${at}]`, degrees, "above 1");
}

function refuseLook(at: number, after: number): never {
  throw new InvalidArgumentError(`afterLooksMm[${at}]`, after, "a finite uncertainty, 0 or more");
}

function requireColumns(
  plan: ColumnPlan,
  people: PeopleColumns,
  out: ChoiceColumns,
  count: number,
  looks: number,
): void {
  const dimensions = plan.dimensions.length;
  const sizes = plan.sizes.length;
  const requireLength = (name: string, column: { readonly length: number } | undefined, length: number) => {
    if (column !== undefined && column.length !== length) {
      throw new InvalidArgumentError(`${name}.length`, column.length, `${length}`);
    }
  };
  if (!Number.isInteger(count)) {
    throw new InvalidArgumentError("meansMm.length", people.meansMm.length, `a multiple of ${dimensions}`);
  }
  if (!Number.isInteger(looks) || (count === 0 && (people.afterLooksMm?.length ?? 0) > 0)) {
    throw new InvalidArgumentError(
      "afterLooksMm.length",
      people.afterLooksMm?.length,
      `a multiple of ${people.meansMm.length}`,
    );
  }
  requireLength("sdsMm", people.sdsMm, count * dimensions);
  requireLength("degreesOfFreedom", people.degreesOfFreedom, count * dimensions);
  requireLength("hasBuild", people.hasBuild, count);
  requireLength("isQuestioned", people.isQuestioned, count);
  for (const name of ["pick", "verdict", "probability", "reasons", "isClose"] as const) {
    requireLength(name, out[name], count);
  }
  requireLength("sizeProbabilities", out.sizeProbabilities, count * sizes);
  requireLength("sizeMisfitsMm", out.sizeMisfitsMm, count * sizes);
}
