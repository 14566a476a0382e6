import { fc, test } from "@fast-check/vitest";
import { type Beliefs, formBeliefs } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate, Prior } from "@tapewise/measurement";
import { expect } from "vitest";
import { priorOf, sureEstimate } from "../fit/cases.ts";
import { bodyMm, degrees, priors, real, sdMm } from "./fit-arbitraries.ts";

const torso = fc.tuple(bodyMm, sdMm, degrees).map((figures) => sureEstimate("torso-length", ...figures));
const belt = fc
  .tuple(real(750, 1050), sdMm, degrees)
  .map((figures) => sureEstimate("hip-belt-girth", ...figures));

/** Everything that is believed, as a prior for the next reading. */
function asPrior({ list, correlation }: Beliefs): Prior {
  return {
    label: "so far",
    source: "readings",
    caveat: "none",
    dimensions: list.map(({ dimension }) => dimension),
    meanMm: list.map(({ meanMm }) => meanMm),
    covarianceMm2: list.map((a) =>
      list.map((b) => correlation(a.dimension, b.dimension) * (a.sdMm * b.sdMm)),
    ),
  };
}

function figures(beliefs: Beliefs, dimension: DimensionId): readonly [meanMm: number, sdMm: number] {
  const belief = beliefs.of(dimension);
  if (belief === undefined) throw new Error(`nothing is believed of the ${dimension}`);
  return [belief.meanMm, belief.sdMm];
}

test.prop([torso, real(300, 600)])("law: a prior with a huge spread changes nothing", (estimate, meanMm) => {
  for (const spread of [1e6, 1e9, 1e15]) {
    const belief = formBeliefs([estimate], priorOf({ "torso-length": [meanMm, spread] })).of("torso-length");
    expect(belief?.meanMm).toBeCloseTo(estimate.mm, 6);
    expect(belief?.sdMm).toBeCloseTo(estimate.uncertaintyMm, 6);
    const degreesOfFreedom = belief?.degreesOfFreedom ?? 0;
    expect(1 / degreesOfFreedom).toBeCloseTo(1 / estimate.degreesOfFreedom, 6);
  }
});

test.prop([torso, priors])(
  "law: the belief is at least as sure as the readings and as the prior",
  (estimate, prior) => {
    const after = formBeliefs([estimate], prior);
    const [, sd] = figures(after, "torso-length");
    expect(sd).toBeLessThanOrEqual(estimate.uncertaintyMm * (1 + 1e-12));
    for (const belief of after.list) {
      expect(belief.sdMm).toBeLessThanOrEqual((belief.priorSdMm ?? 0) * (1 + 1e-12));
    }
  },
);

test.prop([torso, priors])("law: the belief lies between the readings and the prior", (estimate, prior) => {
  const [mean] = figures(formBeliefs([estimate], prior), "torso-length");
  const ends = [estimate.mm, prior.meanMm[0] ?? 0];
  expect(mean).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-9);
  expect(mean).toBeLessThanOrEqual(Math.max(...ends) + 1e-9);
});

test.prop([torso, belt, priors])(
  "law: two estimates at once come to the same as one after the other",
  (first, second, prior) => {
    const atOnce = formBeliefs([first, second], prior);
    const inTurn = formBeliefs([second], asPrior(formBeliefs([first], prior)));
    for (const { dimension, meanMm, sdMm: sd } of atOnce.list) {
      const [mean, spread] = figures(inTurn, dimension);
      expect(mean).toBeCloseTo(meanMm, 6);
      expect(spread).toBeCloseTo(sd, 6);
    }
    expect(inTurn.correlation("torso-length", "hip-belt-girth")).toBeCloseTo(
      atOnce.correlation("torso-length", "hip-belt-girth"),
      6,
    );
  },
);

test.prop([torso, belt, priors])("law: the order of the estimates is irrelevant", (first, second, prior) => {
  const one = formBeliefs([first, second], prior);
  const other = formBeliefs([second, first], prior);
  for (const { dimension, meanMm, sdMm: sd, degreesOfFreedom } of one.list) {
    expect(other.of(dimension)?.meanMm).toBeCloseTo(meanMm, 8);
    expect(other.of(dimension)?.sdMm).toBeCloseTo(sd, 8);
    expect(1 / (other.of(dimension)?.degreesOfFreedom ?? 0)).toBeCloseTo(1 / degreesOfFreedom, 8);
  }
});

test.prop([torso, belt, priors])(
  "law: no belief has fewer degrees of freedom than the least sure estimate",
  (first, second, prior) => {
    const least = Math.min(first.degreesOfFreedom, second.degreesOfFreedom);
    for (const { degreesOfFreedom } of formBeliefs([first, second], prior).list) {
      expect(degreesOfFreedom).toBeGreaterThanOrEqual(least * (1 - 1e-9));
    }
  },
);

test.prop([torso, belt, priors, real(-200, 200)])(
  "law: readings and prior that shift together take the beliefs along",
  (first, second, prior, by) => {
    const before = formBeliefs([first, second], prior);
    const moved = (one: Estimate) =>
      sureEstimate(one.dimension, one.mm + by, one.uncertaintyMm, one.degreesOfFreedom);
    const after = formBeliefs([moved(first), moved(second)], {
      ...prior,
      meanMm: prior.meanMm.map((mean) => mean + by),
    });
    for (const { dimension, meanMm, sdMm: sd } of before.list) {
      const [mean, spread] = figures(after, dimension);
      expect(mean).toBeCloseTo(meanMm + by, 7);
      expect(spread).toBeCloseTo(sd, 7);
    }
  },
);

test.prop([bodyMm, priors])(
  "law: a reading without any error is believed, whatever the prior",
  (mm, prior) => {
    const [mean, sd] = figures(formBeliefs([sureEstimate("torso-length", mm, 0)], prior), "torso-length");
    expect(mean).toBeCloseTo(mm, 9);
    expect(sd).toBe(0);
  },
);
