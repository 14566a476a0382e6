import type { DimensionId } from "@tapewise/landmarks";
import { type LengthUnit, safeParseLengthUnit } from "@tapewise/units";
import { COLUMN_WORDS, type ColumnRole } from "./data.ts";
import { namedDimension } from "./named-dimension.ts";
import { plainWords, splitHeader } from "./split-header.ts";

/** What a header of the long layout, or a key of a JSON row, means. */
export interface LongColumn {
  readonly role: ColumnRole;
  readonly unit?: LengthUnit;
  readonly dimension?: DimensionId;
  /** Dimensions that the words of a value's header may mean, where they may mean several. */
  readonly candidates?: readonly DimensionId[];
}

const LONGEST_HEADER = 100;
const ROLES: readonly ColumnRole[] = ["subject", "measurer", "repeat", "value", "unit"];

/** Reads a header by the words that people use; nothing when none of them is known. */
export function longColumn(header: string): LongColumn | undefined {
  const { label, unit } = splitHeader(header.slice(0, LONGEST_HEADER));
  const plain = plainWords(label);
  const stated = unit === undefined ? {} : { unit };
  const role = ROLES.find((candidate) => COLUMN_WORDS[candidate].includes(plain));
  if (role === "value") {
    // "mm" over a column is its meaning and its unit in one word.
    const word = safeParseLengthUnit(plain);
    return { role, ...(word.ok ? { unit: word.value } : {}), ...stated };
  }
  if (role !== undefined) return { role };
  if (plain === "") return undefined;
  const found = namedDimension(label);
  return found === undefined ? undefined : { role: "value", ...found, ...stated };
}
