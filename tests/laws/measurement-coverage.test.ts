import { type Conditions, type ErrorDefaults, errorDefaults, safeEstimate } from "@tapewise/measurement";
import { createRandom, type Random } from "@tapewise/statistics";
import { type LengthReading, millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

/**
 * Does a coverage interval hold what it states? Lengths and errors are drawn, readings rounded to marks,
 * and intervals counted that hold the length. A count of N trials with chance p has the standard deviation
 * √(N p (1 − p)); four of them are allowed, and the seeds are fixed.
 */
const TRIALS = 6000;

function readingOf(lengthMm: number, stepMm: number): LengthReading {
  const mm = millimetres(Math.round(lengthMm / stepMm) * stepMm);
  return { mm, stepMm: millimetres(stepMm), unit: stepMm === 25.4 ? "in" : "mm", text: `${mm} mm` };
}

/** The share of trials in which the interval holds the length, and its standard deviation about `nominal`. */
function shareHeld(
  trial: () => boolean,
  nominal: number,
): { readonly share: number; readonly deviation: number } {
  let held = 0;
  for (let i = 0; i < TRIALS; i += 1) if (trial()) held += 1;
  return { share: held / TRIALS, deviation: Math.sqrt((nominal * (1 - nominal)) / TRIALS) };
}

describe("a stated error that is the true one", () => {
  const error = { biasMm: 6, repeatMm: 8, resolutionMm: 5 };

  test.each([
    [1, 0.95],
    [3, 0.95],
    [10, 0.95],
    [3, 0.68],
    [3, 0.99],
  ])("law: the interval of %i readings at %f holds the length so often", (count, probability) => {
    const random = createRandom(95).fork(count).fork(`${probability}`);
    const { share, deviation } = shareHeld(() => {
      const length = 400 + 100 * random.uniform();
      const bias = error.biasMm * random.normal();
      const readings = Array.from({ length: count }, () =>
        readingOf(length + bias + error.repeatMm * random.normal(), error.resolutionMm),
      );
      const outcome = safeEstimate({
        dimension: "torso-length",
        readings,
        error,
        coverageProbability: probability,
      });
      if (!outcome.ok) throw new Error("no estimate");
      return outcome.value.coverage.lowerMm <= length && length <= outcome.value.coverage.upperMm;
    }, probability);
    expect(Math.abs(share - probability)).toBeLessThan(4 * deviation);
  });
});

type Part = "handlingMm" | "findingMm" | "lastingMm" | "scaleHalfWidth";
type Factors = Readonly<Record<Part, number>>;
const exact: Factors = { handlingMm: 1, findingMm: 1, lastingMm: 1, scaleHalfWidth: 1 };

function factors(draw: () => number): Factors {
  return { handlingMm: draw(), findingMm: draw(), lastingMm: draw(), scaleHalfWidth: draw() };
}

/** The table of defaults with the figures for oneself, a torso and a tape multiplied. */
function tableTimes(by: Factors): ErrorDefaults {
  const kind = "length along the body";
  const { self, helper } = errorDefaults.hands[kind];
  const changed = {
    handlingMm: self.handlingMm * by.handlingMm,
    findingMm: self.findingMm * by.findingMm,
    lastingMm: self.lastingMm * by.lastingMm,
  };
  const tape = { ...errorDefaults.tools.tape };
  return {
    ...errorDefaults,
    hands: { ...errorDefaults.hands, [kind]: { self: changed, helper } },
    tools: {
      ...errorDefaults.tools,
      tape: { ...tape, scaleHalfWidth: tape.scaleHalfWidth * by.scaleHalfWidth },
    },
  };
}

/** Whether the interval holds the length, when errors are as in one table and the estimate believes another. */
function trial(
  random: Random,
  count: number,
  isAfresh: boolean,
  stepMm: number,
  truth: ErrorDefaults,
  believed: ErrorDefaults,
): boolean {
  const { handlingMm, findingMm, lastingMm } = truth.hands["length along the body"].self;
  const length = 400 + 100 * random.uniform();
  const scale = truth.tools.tape.scaleHalfWidth * (2 * random.uniform() - 1);
  const lasting = lastingMm * random.normal() + scale * length;
  const found = findingMm * random.normal();
  const readings = Array.from({ length: count }, () => {
    const finding = isAfresh ? findingMm * random.normal() : found;
    return readingOf(length + lasting + finding + handlingMm * random.normal(), stepMm);
  });
  const conditions: Conditions = { tool: "tape", measuredBy: "self", landmarksFoundAfresh: isAfresh };
  const outcome = safeEstimate({ dimension: "torso-length", readings, conditions, defaults: believed });
  if (!outcome.ok) throw new Error("no estimate");
  return outcome.value.coverage.lowerMm <= length && length <= outcome.value.coverage.upperMm;
}

/** The root of a mean of eight squares of normal numbers: how an estimate on 8 degrees of freedom scatters. */
function estimateOfOne(random: Random): number {
  return Math.sqrt(Array.from({ length: 8 }, () => random.normal() ** 2).reduce((a, b) => a + b) / 8);
}

describe.each([
  [1, false, 1],
  [3, false, 1],
  [3, true, 1],
  [6, true, 1],
  [3, false, 25.4],
] as const)(
  "the table of defaults: %i readings, bones found afresh %s, to %f mm",
  (count, isAfresh, stepMm) => {
    const random = createRandom(8).fork(count).fork(`${isAfresh}`).fork(`${stepMm}`);

    test("law: figures that are estimates on eight degrees of freedom have intervals that hold 95 %", () => {
      const { share, deviation } = shareHeld(() => {
        const believed = tableTimes(factors(() => estimateOfOne(random)));
        return trial(random, count, isAfresh, stepMm, errorDefaults, believed);
      }, 0.95);
      // The Welch–Satterthwaite formula is an approximation: half a percent is granted to it.
      expect(Math.abs(share - 0.95)).toBeLessThan(0.005 + 4 * deviation);
    });

    test("law: figures each off by a quarter, up or down, have intervals that hold 95 % or a little more", () => {
      const { share, deviation } = shareHeld(() => {
        const truth = tableTimes(factors(() => Math.abs(1 + 0.25 * random.normal())));
        return trial(random, count, isAfresh, stepMm, truth, errorDefaults);
      }, 0.95);
      expect(share).toBeGreaterThan(0.95 - 4 * deviation);
      expect(share).toBeLessThan(0.965 + 4 * deviation);
    });

    test("law: figures that are exactly right have intervals that hold more than 95 %, by the doubt allowed for", () => {
      const { share, deviation } = shareHeld(
        () => trial(random, count, isAfresh, stepMm, tableTimes(exact), errorDefaults),
        0.95,
      );
      // Coverage factors of 2.02 to 2.07 hold 95.7 to 96.2 % of a normal distribution.
      expect(share).toBeGreaterThan(0.95);
      expect(share).toBeLessThan(0.97 + 4 * deviation);
    });
  },
);
