import type { Cut } from "@tapewise/charts";
import { type DimensionId, plausibleLimits } from "@tapewise/landmarks";
import { parseEstimate } from "@tapewise/measurement";
import { parseLength } from "@tapewise/units";
import type { Belief } from "../belief.ts";
import type { Inquiry } from "../inquiry.ts";
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

/** An inquiry for anybody of whom the same is known: its figures mean nothing. */
export function typicalInquiry({ read, prior, cut }: KnownOfPeople, policy: FitPolicy): Inquiry {
  const estimates = read.map((dimension) => {
    const { from, to } = plausibleLimits(dimension, "adult");
    const readings = [parseLength(`${Math.round((from + to) / 2)} mm`)];
    return parseEstimate({ dimension, readings, error: { biasMm: 5, repeatMm: 0, resolutionMm: 0 } });
  });
  const known = [...new Set([...read, ...(prior ?? [])])];
  const list = known.map((dimension): Belief => {
    const estimate = estimates.find((one) => one.dimension === dimension);
    const isForeseen = prior?.includes(dimension) === true;
    const base = { dimension, meanMm: 400, sdMm: 5, degreesOfFreedom: Number.POSITIVE_INFINITY };
    if (estimate === undefined) return { ...base, from: "prior" };
    return { ...base, from: isForeseen ? "readings-and-prior" : "readings", estimate };
  });
  return {
    person: {
      estimates,
      ...(cut === undefined ? {} : { cut }),
      ...(prior === undefined || prior.length === 0
        ? {}
        : { prior: { label: "", source: "", caveat: "", dimensions: prior, meanMm: [], covarianceMm2: [] } }),
    },
    beliefs: {
      list,
      of: (dimension) => list.find((one) => one.dimension === dimension),
      correlation: (first, second) => (first === second ? 1 : 0),
    },
    questions: [],
    policy: { ...policy, mostFurtherReadings: 0 },
    unit: "cm",
  };
}
