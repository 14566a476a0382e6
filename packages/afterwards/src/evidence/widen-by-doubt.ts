import type { Person } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate, Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";

/**
 * A person as seen from a chart whose offset is uncertain: the belief that comes of it has the same mean as before and a
 * variance larger by that of the offset.
 *
 * With Y = X − d, X ~ N(μ, C) and d ~ N(0, v²), the prior of Y is N(μ, C + v²), and with k = C/(C + v²) a reading r of
 * X with uncertainty u is one of Y at μ + (r − μ)/k with the variance v²/k + u²/k². Without a prior k is 1. The
 * degrees of freedom grow by Welch and Satterthwaite, the offset's doubt counting as known. No further reading
 * removes it. The estimate that comes out stands for this chart only and is none to show to people.
 *
 * @throws {@link InvalidArgumentError} when the doubt is not a finite length of 0 or more.
 *
 * @example
 * ```ts
 * import { widenByDoubt } from "@tapewise/afterwards";
 * import { formBeliefs } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const torso = parseEstimate({
 *   dimension: "torso-length",
 *   readings: [parseLength("440 mm")],
 *   error: { biasMm: 3, repeatMm: 0, resolutionMm: 0 },
 * });
 * const wider = widenByDoubt({ estimates: [torso] }, "torso-length", 4);
 * formBeliefs(wider.estimates, wider.prior).of("torso-length")?.sdMm; // => 5
 * ```
 */
export function widenByDoubt(person: Person, dimension: DimensionId, doubtMm: number): Person {
  if (!(Number.isFinite(doubtMm) && doubtMm >= 0)) {
    throw new InvalidArgumentError("doubtMm", doubtMm, "a finite length, 0 or more");
  }
  const { prior } = person;
  const place = prior?.dimensions.indexOf(dimension) ?? -1;
  const before = { meanMm: prior?.meanMm[place] ?? 0, variance: prior?.covarianceMm2[place]?.[place] };
  const share = before.variance === undefined ? 1 : before.variance / (before.variance + doubtMm ** 2);
  return {
    ...person,
    ...(prior === undefined || place < 0 ? {} : { prior: widenPrior(prior, place, doubtMm ** 2) }),
    estimates: person.estimates.map((estimate) =>
      estimate.dimension === dimension ? widen(estimate, before.meanMm, share, doubtMm ** 2) : estimate,
    ),
  };
}

function widenPrior(prior: Prior, place: number, variance: number): Prior {
  return {
    ...prior,
    covarianceMm2: prior.covarianceMm2.map((row, i) =>
      row.map((value, j) => (i === place && j === place ? value + variance : value)),
    ),
  };
}

function widen(estimate: Estimate, meanMm: number, share: number, variance: number): Estimate {
  const { degreesOfFreedom, coverage, spread } = estimate;
  const own = (estimate.uncertaintyMm / share) ** 2;
  const added = variance / share;
  const uncertaintyMm = Math.sqrt(own + added);
  const mm = share === 1 ? estimate.mm : millimetres(meanMm + (estimate.mm - meanMm) / share);
  return {
    ...estimate,
    mm,
    uncertaintyMm,
    degreesOfFreedom: own === 0 ? degreesOfFreedom : degreesOfFreedom * ((own + added) / own) ** 2,
    coverage: {
      ...coverage,
      lowerMm: mm - coverage.factor * uncertaintyMm,
      upperMm: mm + coverage.factor * uncertaintyMm,
    },
    spread: { ...spread, pooledMm: spread.pooledMm / share },
    lastingMm: Math.sqrt((estimate.lastingMm / share) ** 2 + added),
    perReadingMm: estimate.perReadingMm / share,
  };
}
