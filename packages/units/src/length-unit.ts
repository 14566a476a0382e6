/** The units in which people give lengths of a body or a pack: millimetre, centimetre, metre, inch, foot. */
export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft";

/** Every {@link LengthUnit}: the metric ones by size, then the inch and the foot. */
export const lengthUnits: readonly LengthUnit[] = ["mm", "cm", "m", "in", "ft"];

/** What a unit is called and how long it is. */
export interface UnitDescription {
  readonly symbol: LengthUnit;
  readonly name: string;
  readonly plural: string;
  readonly system: "metric" | "inch-pound";
  /** Its length in whole nanometres, exact by definition. */
  readonly nanometres: number;
}
