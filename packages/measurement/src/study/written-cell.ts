import type { IssuePath } from "@tapewise/outcome";
import type { LengthUnit } from "@tapewise/units";

/** One cell of a study as it stands in the data, before its value is read. */
export interface WrittenCell {
  readonly subject: string;
  readonly measurer: string;
  /** Absent where the data number no repeats: then they are counted in their order. */
  readonly repeat?: number;
  readonly text: string;
  /** The unit that a header, a column of units or the caller names. */
  readonly unit?: LengthUnit;
  /** Which column of values it stands in; lack of a unit is reported once for each. */
  readonly column: string;
  readonly path: IssuePath;
  readonly at?: { readonly line: number; readonly column: number };
}
