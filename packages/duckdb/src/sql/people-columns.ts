import { type fit, outcome, units } from "tapewise";
import type { BeliefColumns, PeopleTable } from "./people-table.ts";

/** The columns of every dimension of a plan. */
export function columnsOf(plan: fit.ColumnPlan, { columns }: PeopleTable): readonly BeliefColumns[] {
  return plan.beliefs.map((dimension) => {
    const stem = dimension.replaceAll("-", "_");
    return columns?.[dimension] ?? { mean: `${stem}_mean`, sd: `${stem}_sd` };
  });
}

/** How many millimetres a unit has, exactly. */
export function millimetresIn(unit: units.LengthUnit): number {
  if (!units.lengthUnits.includes(unit)) {
    throw new outcome.InvalidArgumentError("unit", unit, `one of ${units.lengthUnits.join(", ")}`);
  }
  return units.describeUnit(unit).nanometres / 1e6;
}
