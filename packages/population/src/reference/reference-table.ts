import { variableUnit } from "../joint/variable.ts";
import { REFERENCE_CAVEAT, REFERENCE_SOURCE, referenceDefinitions } from "./definitions.ts";
import { figuresOf, type ReferenceCut } from "./figures-of.ts";
import { quantileShares, type ReferenceVariable } from "./reference-figures.ts";
import { referencePopulation } from "./reference-population.ts";

/** What the reference survey says of one variable, in its unit. */
export interface ReferenceRow {
  readonly cut: ReferenceCut;
  readonly variable: ReferenceVariable;
  readonly unit: "mm" | "kg";
  /** How many people were measured. */
  readonly people: number;
  readonly mean: number;
  /** Standard error of the mean: sd / √people. */
  readonly standardError: number;
  /** Sample standard deviation, n − 1. */
  readonly sd: number;
  readonly min: number;
  readonly max: number;
  /** Sample quantiles of type 7 (Hyndman & Fan). */
  readonly quantiles: readonly { readonly share: number; readonly value: number }[];
  /** The survey's column, or the difference of two. */
  readonly column: string;
  readonly note: string;
  readonly source: string;
  readonly caveat: string;
}

/**
 * The reference survey's figures of a sex, variable by variable, with quantiles as they were counted: no curve
 * is assumed. Each row carries unit, source and caveat.
 *
 * @throws {@link InvalidArgumentError} for a cut other than women or men.
 *
 * @example
 * ```ts
 * import { referenceTable } from "@tapewise/population";
 * const waist = referenceTable("women").find((row) => row.variable === "waist-girth");
 * waist?.unit; // => "mm"
 * waist?.quantiles.find(({ share }) => share === 0.95)?.value; // => 1036.55
 * ```
 */
export function referenceTable(cut: ReferenceCut): readonly ReferenceRow[] {
  const { people, quantiles } = figuresOf(cut);
  const model = referencePopulation(cut);
  return referenceDefinitions.map(({ variable, column, note }) => {
    const { mean, sd } = model.distribution(variable);
    const counted = quantiles[variable];
    return {
      cut,
      variable,
      unit: variableUnit(variable),
      people,
      mean,
      standardError: sd / Math.sqrt(people),
      sd,
      min: counted[0] ?? 0,
      max: counted[counted.length - 1] ?? 0,
      quantiles: quantileShares.map((share, k) => ({ share, value: counted[k + 1] ?? 0 })),
      column,
      note,
      source: REFERENCE_SOURCE,
      caveat: REFERENCE_CAVEAT,
    };
  });
}
