import { formBeliefs } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { priorOf, sureEstimate } from "./cases.ts";

const PAIR: readonly DimensionId[] = ["torso-length", "hip-belt-girth"];

/** Torso 420 ± 10 mm, hip belt 900 ± 20 mm, correlation ½. */
const pair: Prior = {
  ...priorOf({}),
  dimensions: PAIR,
  meanMm: [420, 900],
  covarianceMm2: [
    [100, 100],
    [100, 400],
  ],
};

describe("without a prior", () => {
  test("an estimate stands for itself", () => {
    const torso = sureEstimate("torso-length", 440, 7, 12);
    const beliefs = formBeliefs([torso], undefined);
    expect(beliefs.list).toEqual([
      {
        dimension: "torso-length",
        meanMm: 440,
        sdMm: 7,
        degreesOfFreedom: 12,
        from: "readings",
        estimate: torso,
      },
    ]);
    expect(beliefs.of("hip-belt-girth")).toBeUndefined();
  });

  test("two of them are independent", () => {
    const beliefs = formBeliefs(
      [sureEstimate("torso-length", 440, 7), sureEstimate("hip-belt-girth", 900, 9)],
      undefined,
    );
    expect(beliefs.correlation("torso-length", "hip-belt-girth")).toBe(0);
    expect(beliefs.correlation("torso-length", "torso-length")).toBe(1);
  });

  test("nobody read, nothing believed", () => {
    expect(formBeliefs([], undefined).list).toEqual([]);
  });
});

describe("with a prior", () => {
  const beliefs = formBeliefs([sureEstimate("torso-length", 440, 10, 8)], pair);
  const torso = beliefs.of("torso-length");
  const belt = beliefs.of("hip-belt-girth");

  test("equally sure readings and prior meet half way, at 1/√2 of the spread", () => {
    expect(torso?.meanMm).toBeCloseTo(430, 12);
    expect(torso?.sdMm).toBeCloseTo(Math.sqrt(50), 12);
    expect(torso?.from).toBe("readings-and-prior");
    expect([torso?.priorMeanMm, torso?.priorSdMm]).toEqual([420, 10]);
  });

  test("what was not read follows what was: 900 + 100/200 · 20, variance 400 − 100²/200", () => {
    expect(belt?.meanMm).toBeCloseTo(910, 12);
    expect(belt?.sdMm).toBeCloseTo(Math.sqrt(350), 12);
    expect(belt?.from).toBe("prior");
    expect(belt?.estimate).toBeUndefined();
  });

  test("their correlation is what the reading leaves: 50/√(50 · 350)", () => {
    expect(beliefs.correlation("torso-length", "hip-belt-girth")).toBeCloseTo(50 / Math.sqrt(50 * 350), 12);
    expect(beliefs.correlation("hip-belt-girth", "torso-length")).toBeCloseTo(50 / Math.sqrt(50 * 350), 12);
  });

  test("the doubt about the uncertainty counts with the square of its part in the variance", () => {
    // Torso: the part is 50/100 = ½, so ν = 8/(½)². Belt: 50²/(100 · 350) = 1/14, so ν = 8 · 14².
    expect(torso?.degreesOfFreedom).toBeCloseTo(32, 9);
    expect(belt?.degreesOfFreedom).toBeCloseTo(1568, 6);
  });

  test("an estimate that the prior does not speak of stays as it is", () => {
    const chest = sureEstimate("chest-girth", 950, 12, 9);
    const all = formBeliefs([chest], pair);
    expect(all.of("chest-girth")).toMatchObject({
      meanMm: 950,
      sdMm: 12,
      degreesOfFreedom: 9,
      from: "readings",
    });
    expect(all.correlation("chest-girth", "torso-length")).toBe(0);
    expect(all.of("torso-length")).toMatchObject({ meanMm: 420, sdMm: 10, from: "prior" });
    expect(all.of("torso-length")?.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  test("a vague prior leaves the digits of the reading alone", () => {
    const vague = formBeliefs([sureEstimate("torso-length", 440, 7)], priorOf({ "torso-length": [0, 1e9] }));
    expect(vague.of("torso-length")?.sdMm).toBeCloseTo(7, 9);
    expect(vague.of("torso-length")?.meanMm).toBeCloseTo(440, 6);
  });
});

describe("what is no joint normal distribution is refused", () => {
  const broken = (change: Partial<Prior>) => () => formBeliefs([], { ...pair, ...change });
  const matrix = (covarianceMm2: readonly (readonly number[])[]) => broken({ covarianceMm2 });

  test.each([
    ["a mean too few", broken({ meanMm: [420] }), /meanMm/],
    ["a mean that is no number", broken({ meanMm: [420, Number.NaN] }), /meanMm/],
    ["a dimension twice", broken({ dimensions: ["torso-length", "torso-length"] }), /different dimensions/],
    ["a row too few", matrix([[100, 100]]), /covarianceMm2/],
    ["a row too short", matrix([[100, 100], [100]]), /covarianceMm2/],
    [
      "an infinite variance",
      matrix([
        [Number.POSITIVE_INFINITY, 0],
        [0, 400],
      ]),
      /covarianceMm2/,
    ],
    [
      "no spread",
      matrix([
        [0, 0],
        [0, 400],
      ]),
      /positive-definite/,
    ],
    [
      "a lopsided matrix",
      matrix([
        [100, 100],
        [90, 400],
      ]),
      /symmetric/,
    ],
    [
      "a correlation of 1",
      matrix([
        [100, 200],
        [200, 400],
      ]),
      /positive-definite/,
    ],
  ])("%s", (_, form, message) => {
    expect(form).toThrow(InvalidArgumentError);
    expect(form).toThrow(message);
  });

  test("three correlations that cannot hold at once, though each two can", () => {
    // Determinant of [1 .9 −.9; .9 1 .9; −.9 .9 1] = 1 + 2·(.9 · .9 · −.9) − 3·.81 = −2.888.
    const dimensions: readonly DimensionId[] = [...PAIR, "chest-girth"];
    const covarianceMm2 = [
      [1, 0.9, -0.9],
      [0.9, 1, 0.9],
      [-0.9, 0.9, 1],
    ];
    const form = () => formBeliefs([], { ...pair, dimensions, meanMm: [420, 900, 950], covarianceMm2 });
    expect(form).toThrow(/positive-definite/);
  });

  test("mirrored covariances may differ by rounding", () => {
    const nearly = [
      [100, 100],
      [100 + 1e-10, 400],
    ];
    expect(formBeliefs([], { ...pair, covarianceMm2: nearly }).list).toHaveLength(2);
  });
});

describe("an estimate that is none is refused", () => {
  const torso = sureEstimate("torso-length", 440, 7);

  test.each([
    ["a dimension twice", [torso, torso], /estimates/],
    ["no length", [{ ...torso, mm: Number.NaN as typeof torso.mm }], /estimate\.mm/],
    ["an infinite uncertainty", [{ ...torso, uncertaintyMm: Number.POSITIVE_INFINITY }], /uncertaintyMm/],
    ["a negative uncertainty", [{ ...torso, uncertaintyMm: -1 }], /uncertaintyMm/],
    ["too few degrees of freedom", [{ ...torso, degreesOfFreedom: 1 }], /degreesOfFreedom/],
  ])("%s", (_, estimates, message) => {
    expect(() => formBeliefs(estimates, undefined)).toThrow(InvalidArgumentError);
    expect(() => formBeliefs(estimates, undefined)).toThrow(message);
  });
});
