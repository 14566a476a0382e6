import { InvalidArgumentError } from "@tapewise/outcome";
import type { RecommendOptions } from "./person.ts";

/** The unit of the sentences; refuses options without one, and a unit that no sentence is written in. */
export function checkUnit(options: Partial<RecommendOptions> | undefined): RecommendOptions["unit"] {
  const unit = options?.unit;
  if (unit !== "cm" && unit !== "in") throw new InvalidArgumentError("unit", unit, '"cm" or "in"');
  return unit;
}
