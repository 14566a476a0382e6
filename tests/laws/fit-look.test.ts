import { fc, test } from "@fast-check/vitest";
import { type Recommendation, recommend, type SizeFit } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import { expect } from "vitest";
// What a look would bring is shown only where it is worth the while; its laws hold everywhere.
import { lookAhead, type Standing } from "../../packages/fit/src/look-ahead.ts";
import { answer, find, sureEstimate } from "../fit/cases.ts";
import { bodyMm, charts, readEstimate, real, sdMm } from "./fit-arbitraries.ts";

interface Prospects {
  readonly standing: Standing;
  readonly now: { readonly meanMm: number; readonly sdMm: number };
}

const prospects: fc.Arbitrary<Prospects> = fc
  .record({
    chart: charts,
    meanMm: bodyMm,
    sdMm,
    belt: fc.tuple(real(750, 1050), sdMm),
    hold: fc.constantFrom(0, 0.05),
  })
  .map(({ chart, meanMm, sdMm: sd, belt, hold }) => {
    const estimates = [sureEstimate("torso-length", meanMm, sd), sureEstimate("hip-belt-girth", ...belt)];
    const { sizes, pick } = answer({ estimates }, chart);
    const picked = sizes.find((fit) => fit.size === pick);
    if (picked === undefined) throw new Error("the pick is one of the sizes");
    return { standing: { fits: sizes, pick: picked, hold }, now: { meanMm, sdMm: sd } };
  });

test.prop([prospects, real(0, 1)])(
  "law: further readings gain nothing below 0, and at most what is missing to certainty",
  ({ standing, now }, part) => {
    const { changeProbability, gainProbability } = lookAhead(standing, "torso-length", now, now.sdMm * part);
    expect(gainProbability).toBeGreaterThanOrEqual(0);
    // 48 equally likely points stand for the whole distribution: each counts for 1/48.
    expect(gainProbability).toBeLessThanOrEqual(1 - standing.pick.probability + 1 / 48);
    expect(gainProbability).toBeLessThanOrEqual(changeProbability);
    expect(changeProbability).toBeLessThanOrEqual(1);
  },
);

test.prop([prospects])(
  "law: where nothing is learned, nothing changes and nothing is gained",
  ({ standing, now }) => {
    const nothing = { changeProbability: 0, gainProbability: 0 };
    expect(lookAhead(standing, "torso-length", now, now.sdMm)).toEqual(nothing);
    expect(lookAhead(standing, "torso-length", now, 2 * now.sdMm)).toEqual(nothing);
    expect(lookAhead(standing, "torso-length", { ...now, sdMm: 0 }, 0)).toEqual(nothing);
  },
);

test.prop([prospects])("law: a chart of one size leaves nothing to change", ({ standing, now }) => {
  const alone: Standing = { ...standing, fits: [standing.pick] };
  expect(lookAhead(alone, "torso-length", now, 0)).toEqual({ changeProbability: 0, gainProbability: 0 });
});

test.prop([prospects, real(0, 1), real(0, 1)])(
  "law: learning more never gains less",
  ({ standing, now }, a, b) => {
    const gain = (part: number) =>
      lookAhead({ ...standing, hold: 0 }, "torso-length", now, now.sdMm * part).gainProbability;
    const [less, more] = [Math.min(a, b), Math.max(a, b)];
    expect(gain(less)).toBeGreaterThanOrEqual(gain(more) - 1 / 24);
  },
);

test.prop([prospects, real(0, 0.99)])(
  "law: a pick that a reason holds changes no more often than one that nothing holds",
  ({ standing, now }, part) => {
    const at = (hold: number) => lookAhead({ ...standing, hold }, "torso-length", now, now.sdMm * part);
    expect(at(0.05).changeProbability).toBeLessThanOrEqual(at(0).changeProbability);
    expect(at(0.05).gainProbability).toBeLessThanOrEqual(at(0).gainProbability);
  },
);

test.prop([prospects])(
  "law: all there is to learn of one length turns the best guess into the best size for it",
  ({ standing, now }) => {
    const { gainProbability } = lookAhead({ ...standing, hold: 0 }, "torso-length", now, 0);
    const within = bestWithin(standing.fits, now);
    expect(Math.abs(gainProbability - (within - standing.pick.probability))).toBeLessThanOrEqual(
      (2 * standing.fits.length) / 48,
    );
  },
);

/** Expected probability of the size that is best once the torso length is known, by a plain sum over a fine grid. */
function bestWithin(fits: readonly SizeFit[], { meanMm, sdMm: sd }: Prospects["now"]): number {
  const step = 0.01;
  let expected = 0;
  for (let z = -6; z < 6; z += step) {
    const x = meanMm + (z + step / 2) * sd;
    const best = fits.map((fit) =>
      fit.dimensions.reduce((product, { dimension, range, probability }) => {
        const known = x >= range.interval.from && x <= range.interval.to ? 1 : 0;
        return product * (dimension === "torso-length" ? known : probability);
      }, 1),
    );
    expected += (step * Math.max(...best) * Math.exp(-0.5 * (z + step / 2) ** 2)) / Math.sqrt(2 * Math.PI);
  }
  return expected;
}

const NEVER_SURE = { sureProbability: 1, changeProbability: 0, worthwhileGain: 0 };

test.prop([readEstimate, charts])(
  "law: a look is asked for only where it has a real chance and a real gain",
  (estimate, chart) => {
    const { verdict, next, probability } = answer({ estimates: [estimate] }, chart);
    const isAsked = next.some((step) => step.code === "measure-again");
    expect(verdict === "measure-again").toBe(isAsked);
    if (!isAsked) return;
    const { count, changeProbability, gainProbability, nowProbability } = find(next, "measure-again").facts;
    expect(Number(changeProbability)).toBeGreaterThanOrEqual(0.15);
    expect(Number(gainProbability)).toBeGreaterThanOrEqual(0.03);
    expect([1, 2, 3]).toContain(count);
    expect(nowProbability).toBe(probability);
    expect(probability).toBeLessThan(0.9);
  },
);

test.prop([readEstimate, charts])("law: a policy that asks for less never asks more", (estimate, chart) => {
  const with_ = (more: object): Recommendation => {
    const policy = { ...defaultFigures, ...more };
    return unwrap(recommend({ estimates: [estimate] }, chart, { unit: "cm", policy }));
  };
  const isAsked = ({ verdict }: Recommendation) => verdict === "measure-again";
  expect(isAsked(with_({ mostFurtherReadings: 0 }))).toBe(false);
  if (isAsked(with_({}))) expect(isAsked(with_(NEVER_SURE))).toBe(true);
  if (isAsked(with_({ changeProbability: 0.4 }))) expect(isAsked(with_({}))).toBe(true);
});

/** The defaults as they are documented. */
const defaultFigures = {
  fitProbability: 0.5,
  sureProbability: 0.9,
  tieLoss: 0.05,
  changeProbability: 0.15,
  worthwhileGain: 0.03,
  mostFurtherReadings: 3,
  hopelessProbability: 0.01,
  questionProbability: 0.002,
};
