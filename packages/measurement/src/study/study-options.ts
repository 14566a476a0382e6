import type { AgeGroup, DimensionId } from "@tapewise/landmarks";
import type { Separator } from "@tapewise/tables";
import type { DecimalMark, LengthUnit } from "@tapewise/units";

/**
 * How the readings of a study are laid out.
 *
 * - `long`: a row for each reading, with columns for the subject, the measurer, the repeat and the value.
 * - `wide`: a row for each subject, with a column for each reading: `Ann 1 (cm)`, `Ann 2 (cm)`, `Ben 1 (cm)`.
 * - `json`: a list of objects that are rows of the long layout, or an object with such a list.
 */
export type StudyLayout = "long" | "wide" | "json";

/** How a study is written, where the text does not say so. */
export interface StudyOptions {
  /** The dimension that was measured; a header may name it as well. Without it no reading can be impossible. */
  readonly dimension?: DimensionId | undefined;
  /** Told by the headers where it is left out. */
  readonly layout?: StudyLayout | undefined;
  /** What parts the cells; found in the text where it is left out. */
  readonly separator?: Separator | undefined;
  /** The unit of cells that have none where their header has none. There is no default. */
  readonly unit?: LengthUnit | undefined;
  /** The character before decimals. Without it point and comma both are, and `1,750 mm` is reported as unclear. */
  readonly decimalMark?: DecimalMark | undefined;
  /** Cells that say that there is no reading, beside empty ones; `-`, `–`, `NA`, `N/A` and `.` where it is left out. */
  readonly missingMarks?: readonly string[] | undefined;
  /** Whose plausible limits a reading must keep; `child`, which lets grown people through too, where it is left out. */
  readonly people?: AgeGroup | undefined;
  /** Whether readings outside the limits take part in computations all the same. */
  readonly keepImpossible?: boolean | undefined;
  /** The name of the only measurer where the data name none; `the measurer` where it is left out. */
  readonly measurer?: string | undefined;
  /** The file's name, for the places in issues. */
  readonly file?: string | undefined;
}
