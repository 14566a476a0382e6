import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate } from "@tapewise/measurement";
import { millimetres } from "@tapewise/units";
import type { Belief } from "../belief.ts";
import type { Inquiry } from "../inquiry.ts";
import type { FitPolicy } from "../policy.ts";
import type { KnownOfPeople } from "./known-of-people.ts";

/** An inquiry for anybody of whom the same is known: its figures mean nothing. */
export function typicalInquiry({ read, prior, cut }: KnownOfPeople, policy: FitPolicy): Inquiry {
  const estimates = read.map(typicalEstimate);
  const known = [...new Set([...read, ...(prior ?? [])])];
  const list = known.map((dimension): Belief => {
    const estimate = estimates.find((one) => one.dimension === dimension);
    const isForeseen = prior?.includes(dimension) === true;
    const base = { dimension, meanMm: SOME_MM, sdMm: SOME_SD_MM, degreesOfFreedom: Number.POSITIVE_INFINITY };
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

const SOME_MM = 400;
const SOME_SD_MM = 5;

function typicalEstimate(dimension: DimensionId): Estimate {
  return {
    dimension,
    mm: millimetres(SOME_MM),
    uncertaintyMm: SOME_SD_MM,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    coverage: { probability: 0, factor: 0, lowerMm: SOME_MM, upperMm: SOME_MM },
    readings: [],
    spread: { pooledMm: 0, degreesOfFreedom: Number.POSITIVE_INFINITY },
    lastingMm: SOME_SD_MM,
    perReadingMm: 0,
    budget: [],
    conditions: {
      tool: "tape",
      measuredBy: "self",
      landmarksFoundAfresh: false,
      ruleLengthMm: SOME_MM,
      assumed: [],
    },
  };
}
