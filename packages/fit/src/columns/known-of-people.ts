import type { Cut } from "@tapewise/charts";
import type { DimensionId } from "@tapewise/landmarks";
import type { FitPolicy } from "../policy.ts";

/** What is known of all people of some columns: of whom, not how much. */
export interface KnownOfPeople {
  /** The dimensions that were read. */
  readonly read: readonly DimensionId[];
  /** The dimensions that a prior speaks of; none where there is no prior. */
  readonly prior?: readonly DimensionId[];
  /** The cut that suits these bodies, where it is known. */
  readonly cut?: Cut;
  readonly policy?: FitPolicy;
}
