import { landmarks, units } from "tapewise";

/** What a column of a table of people holds. */
export interface PersonColumn {
  /** Its name in the table. */
  readonly column: string;
  /** Its type, as DuckDB writes it. */
  readonly type: string;
  readonly kind: "id" | "text" | "length" | "switch" | "list" | "error" | "reading";
  /** The field of a person, or the dimension of a reading. */
  readonly field: string;
  /** Which of the readings it is, where the header says so. */
  readonly number?: number;
  /** The unit of numbers that name none. */
  readonly unit?: units.LengthUnit;
}

const KINDS: Readonly<Record<string, PersonColumn["kind"]>> = {
  id: "id",
  cut: "text",
  measuredBy: "text",
  tool: "text",
  unit: "text",
  stature: "length",
  ruleLength: "length",
  landmarksFoundAfresh: "switch",
  firstPack: "switch",
  build: "list",
  biasMm: "error",
  repeatMm: "error",
  resolutionMm: "error",
};

/** Every word that a header may begin with. */
export const columnWords: readonly string[] = [
  ...new Set([...Object.keys(KINDS), ...landmarks.dimensionIds]),
];

/**
 * What a header says: a field of a person as the batch contract has it, or a dimension, then the number of the reading
 * and the unit in brackets: `id`, `stature (cm)`, `torso-length 2 (in)`. `undefined` for any other header.
 */
export function readHeader(header: string): Omit<PersonColumn, "column" | "type"> | undefined {
  const match = /^(.+?)(?:\s+(\d{1,3}))?(?:\s*\(([a-z]+)\))?$/.exec(header.trim());
  const [, field = "", number, unitText] = match ?? [];
  const unit = units.lengthUnits.find((one) => one === unitText);
  if (unitText !== undefined && unit === undefined) return undefined;
  const kind = number === undefined && Object.hasOwn(KINDS, field) ? KINDS[field] : undefined;
  const isReading = landmarks.dimensionIds.some((one) => one === field);
  if (kind === undefined && !isReading) return undefined;
  if (unit !== undefined && kind !== undefined && kind !== "length") return undefined;
  return {
    field,
    kind: kind ?? "reading",
    ...(number === undefined ? {} : { number: Number(number) }),
    ...(unit === undefined ? {} : { unit }),
  };
}
