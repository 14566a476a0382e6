import { InvalidArgumentError } from "@tapewise/outcome";
import { checkKey } from "./check-key.ts";
import type { SeenOutcome } from "./seen-outcome.ts";

/** Refuses an outcome whose range is not in order, whose belief is none, that names no side or no product. */
export function checkSeen(seen: SeenOutcome): void {
  const { fromMm, toMm, meanMm, sdMm, side } = seen;
  checkKey(seen, "seen");
  if (!(fromMm <= toMm)) throw new InvalidArgumentError("seen.toMm", toMm, "at least seen.fromMm");
  if (!Number.isFinite(meanMm)) throw new InvalidArgumentError("seen.meanMm", meanMm, "a finite length");
  if (!(Number.isFinite(sdMm) && sdMm >= 0)) throw new InvalidArgumentError("seen.sdMm", sdMm, "0 or more");
  if (side !== "below" && side !== "inside" && side !== "above") {
    throw new InvalidArgumentError("seen.side", side, "below, inside or above");
  }
}
