import type { DimensionId } from "@tapewise/landmarks";
import type { Separator } from "@tapewise/tables";
import type { DecimalMark, LengthUnit } from "@tapewise/units";
import type { About, Variable } from "../joint/joint-model.ts";

/** Where a length stands in a survey. */
export interface LengthColumn {
  readonly column: string;
  /** A column to be taken off: torso length as the height of C7 less that of the iliac crest. */
  readonly minus?: string;
  /** The unit in which the column, or both, are written. */
  readonly unit: LengthUnit;
}

/** Where body mass stands in a survey. */
export interface MassColumn {
  readonly column: string;
  /** How many kilograms one unit of the column is: 1, 0.1 for tenths of a kilogram, 0.45359237 for pounds. */
  readonly kilogramsPerUnit: number;
}

/** Which column means what. */
export interface SurveyMapping {
  readonly about: About;
  /** A column for each dimension; a list of columns where a dimension was read several times. */
  readonly dimensions: { readonly [D in DimensionId]?: LengthColumn | readonly LengthColumn[] };
  readonly mass?: MassColumn;
  /** The column of the people's weights, where the survey has one. */
  readonly weight?: string;
  /** The column that tells people apart. */
  readonly id?: string;
}

/** How a survey is written. */
export interface SurveyOptions {
  /** What parts the cells; by the line of column names where it is left out. */
  readonly separator?: Separator;
  /** The character before decimals. Without it point and comma both are, and `1,750` is reported as unclear. */
  readonly decimalMark?: DecimalMark;
  /** Cells that mean "no value"; an empty cell, `NA`, `N/A`, `-` and `.` where it is left out. */
  readonly missingMarks?: readonly string[];
  /** The file's name, for the places in issues. */
  readonly file?: string;
}

/** One person of a survey. */
export interface SurveyPerson {
  /** The line of the file. */
  readonly line: number;
  readonly id?: string;
  /** 1 where the survey has no weights. */
  readonly weight: number;
  /** In mm, body mass in kg; the mean where there are several readings. A missing value is not there. */
  readonly values: Readonly<Partial<Record<Variable, number>>>;
  /** The single readings, in the order of their columns. */
  readonly readings: Readonly<Partial<Record<Variable, readonly number[]>>>;
}

/** A survey that was read. */
export interface Survey {
  readonly about: About;
  readonly variables: readonly Variable[];
  readonly people: readonly SurveyPerson[];
  /** Whether the people have weights of their own. */
  readonly weighted: boolean;
}
