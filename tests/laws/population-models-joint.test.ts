import { fc, test } from "@fast-check/vitest";
import { interval } from "@tapewise/intervals";
import {
  type Box,
  empiricalJoint,
  type Known,
  mixtureJoint,
  type NormalJoint,
  normalBoxProbability,
  normalJoint,
  priorFrom,
  reweight,
  withLognormal,
} from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect } from "vitest";
import { between, joint } from "./population-models-arbitraries.ts";

const runs = { numRuns: 40 };
const score = between(-2.5, 2.5);

/** A value so many standard deviations from a variable's mean. */
function at(model: NormalJoint, place: number, z: number): number {
  return (model.mean[place] ?? 0) + z * Math.sqrt(model.covariance[place]?.[place] ?? 0);
}

function closeModels(a: NormalJoint, b: NormalJoint): void {
  expect(a.variables).toEqual(b.variables);
  a.mean.forEach((mean, i) => {
    expect(mean).toBeCloseTo(b.mean[i] ?? 0, 6);
  });
  a.covariance.flat().forEach((value, k) => {
    expect(value).toBeCloseTo(b.covariance.flat()[k] ?? 0, 5);
  });
}

/** A box by the scores of its bounds. */
function boxOf(model: NormalJoint, bounds: readonly (readonly [number, number])[]): Box {
  return Object.fromEntries(
    bounds.map(([a, b], i) => {
      const [low, high] = a < b ? [a, b] : [b, a];
      return [model.variables[i] ?? "stature", interval(at(model, i, low), at(model, i, high))];
    }),
  );
}

describe("what is known", () => {
  test.prop([joint(4), score, score], runs)(
    "law: it does not matter in which order one learns",
    (model, a, b) => {
      const stature: Known = { stature: millimetres(at(model, 0, a)) };
      const waist: Known = { "waist-girth": millimetres(at(model, 2, b)) };
      closeModels(
        model.conditional(stature).conditional(waist),
        model.conditional(waist).conditional(stature),
      );
      closeModels(model.conditional({ ...stature, ...waist }), model.conditional(waist).conditional(stature));
    },
  );

  test.prop([joint(4), score], runs)(
    "law: looking at fewer variables before or after is the same",
    (model, z) => {
      const known: Known = { stature: millimetres(at(model, 0, z)) };
      closeModels(
        model.conditional(known).marginal(["torso-length"]),
        model.marginal(["torso-length", "stature"]).conditional(known),
      );
    },
  );

  test.prop([joint(3), score], runs)("law: knowing more never spreads more", (model, z) => {
    const given = model.conditional({ stature: millimetres(at(model, 0, z)) });
    for (const variable of given.variables) {
      const before = model.distribution(variable).variance;
      expect(given.distribution(variable).variance).toBeLessThanOrEqual(before * (1 + 1e-12));
    }
  });

  test.prop([joint(3), score, score], runs)(
    "law: the density of two is that of one and of the other given it",
    (model, a, b) => {
      const first: Known = { stature: millimetres(at(model, 0, a)) };
      const second: Known = { "torso-length": millimetres(at(model, 1, b)) };
      const together = model.logDensity({ ...first, ...second });
      expect(together).toBeCloseTo(model.logDensity(first) + model.conditional(first).logDensity(second), 7);
    },
  );

  test.prop([joint(4), score], runs)(
    "law: a prior is a model that fit can use: symmetric, with positive variances",
    (model, z) => {
      const prior = priorFrom(model, { stature: millimetres(at(model, 0, z)) });
      prior.covarianceMm2.forEach((row, i) => {
        expect(row[i]).toBeGreaterThan(0);
        row.forEach((value, j) => {
          expect(value).toBe(prior.covarianceMm2[j]?.[i]);
        });
      });
    },
  );
});

describe("shares of boxes", () => {
  const bounds = (size: number) => fc.array(fc.tuple(score, score), { minLength: size, maxLength: size });

  test.prop([fc.integer({ min: 1, max: 5 }).chain((size) => fc.tuple(joint(size), bounds(size))), score], {
    numRuns: 25,
  })("law: a box cut in two has the sum of both parts", ([model, edges], z) => {
    const box = boxOf(model, edges);
    const range = box.stature ?? interval(0, 1);
    const cut = Math.min(Math.max(at(model, 0, z), range.from), range.to);
    const whole = model.boxProbability(box);
    const left = model.boxProbability({ ...box, stature: interval(range.from, cut) });
    const right = model.boxProbability({ ...box, stature: interval(cut, range.to) });
    const slack = 4 * (whole.error + left.error + right.error) + 1e-12;
    expect(Math.abs(left.probability + right.probability - whole.probability)).toBeLessThanOrEqual(slack);
  });

  test.prop([joint(4), bounds(4), fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 })], { numRuns: 25 })(
    "law: the order of the variables does not matter",
    (model, edges, order) => {
      const box = boxOf(model, edges);
      const turned = model.marginal(order.map((i) => model.variables[i] ?? "stature"));
      const [a, b] = [model.boxProbability(box), turned.boxProbability(box)];
      expect(Math.abs(a.probability - b.probability)).toBeLessThanOrEqual(4 * (a.error + b.error) + 1e-12);
    },
  );

  test.prop([joint(3), bounds(3)], runs)("law: a box holds no more than any of its sides", (model, edges) => {
    const box = boxOf(model, edges);
    const { probability, error } = model.boxProbability(box);
    expect(probability).toBeGreaterThanOrEqual(0);
    for (const variable of model.variables) {
      const side = box[variable];
      if (side === undefined) continue;
      expect(probability).toBeLessThanOrEqual(model.distribution(variable).probability(side) + error + 1e-14);
    }
  });

  test.prop([joint(3), bounds(3)], runs)(
    "law: three variables given one, averaged over it, are the three",
    (model, edges) => {
      // An independent rule: the trapezium over 801 values of the first variable.
      const box = boxOf(model, edges);
      const { stature = interval(0, 1), ...others } = box;
      const width = (stature.to - stature.from) / 800;
      fc.pre(width > 0);
      let sum = 0;
      const own = model.distribution("stature");
      for (let i = 0; i <= 800; i += 100) {
        const known = { stature: millimetres(stature.from + i * width) };
        const inside = model.conditional(known).boxProbability(others).probability;
        sum += (i === 0 || i === 800 ? 0.5 : 1) * inside * own.density(known.stature);
      }
      // Nine of the values: enough to tell a wrong answer from a right one.
      const whole = model.boxProbability(box).probability;
      expect(Math.abs(sum * width * 100 - whole)).toBeLessThan(0.03);
    },
  );

  test.prop([fc.array(between(0.05, 0.9), { minLength: 5, maxLength: 5 })], { numRuns: 10 })(
    "law: the stated error of five variables is kept (one factor, against the integral over it)",
    (loadings) => {
      const correlation = loadings.map((a, i) => loadings.map((b, j) => (i === j ? 1 : a * b)));
      const lower = loadings.map((_, i) => -1 - i / 4);
      const upper = loadings.map((_, i) => 0.5 + i / 3);
      const { probability, error } = normalBoxProbability(lower, upper, correlation);
      const about = { label: "x", source: "x", caveat: "" };
      let sum = 0;
      const step = 0.05;
      for (let t = -8; t <= 8; t += step) {
        const given = loadings.map((l, i) =>
          normalJoint({ about, variables: ["stature"], mean: [l * t], covariance: [[1 - l * l]] })
            .distribution("stature")
            .probability(interval(lower[i] ?? 0, upper[i] ?? 0)),
        );
        sum += given.reduce((product, each) => product * each, Math.exp((-t * t) / 2));
      }
      // The trapezium rule is exact to rounding for a smooth bell; the sharpest edge here has width 0.4.
      expect(Math.abs((sum * step) / Math.sqrt(2 * Math.PI) - probability)).toBeLessThanOrEqual(error + 1e-9);
    },
  );
});

describe("other models", () => {
  test.prop([joint(2), joint(2), between(0.1, 0.9)], runs)(
    "law: the spread of a mixture is that within its parts and that between them",
    (a, b, weight) => {
      const about = a.about;
      const both = mixtureJoint({
        about,
        parts: [
          { weight, model: a },
          { weight: 1 - weight, model: b },
        ],
      });
      const own = both.distribution("torso-length");
      const [va, vb] = [a, b].map((model) => model.distribution("torso-length"));
      const within = weight * (va?.variance ?? 0) + (1 - weight) * (vb?.variance ?? 0);
      const apart = (va?.mean ?? 0) - (vb?.mean ?? 0);
      expect(own.variance / (within + weight * (1 - weight) * apart ** 2)).toBeCloseTo(1, 9);
      expect(both.covariance[1]?.[1]).toBeCloseTo(own.variance, 6);
    },
  );

  test.prop([joint(4)], runs)("law: re-weighted to what it has, a model stays", (model) => {
    const same = reweight(model, model.marginal(["stature", "hip-girth"]));
    closeModels(same, normalJoint({ ...model }));
  });

  test.prop([joint(4), joint(2), score], runs)(
    "law: re-weighting gives the named variables what was asked for, and keeps the rest given them",
    (model, made, z) => {
      const target = normalJoint({ ...made, variables: ["hip-girth", "stature"] });
      const changed = reweight(model, target);
      closeModels(changed.marginal(["hip-girth", "stature"]), target);
      const known: Known = {
        "hip-girth": millimetres(at(target, 0, z)),
        stature: millimetres(at(target, 1, -z)),
      };
      closeModels(
        changed.conditional(known),
        normalJoint({ ...model.conditional(known), about: changed.about }),
      );
    },
  );

  test.prop([joint(3), fc.integer({ min: 0, max: 1000 })], { numRuns: 15 })(
    "law: measured people given a value keep their regression, whoever they are",
    (model, seed) => {
      const random = createRandom(seed);
      const people = Array.from({ length: 12 }, () => model.sample(random));
      const crew = empiricalJoint({ about: model.about, variables: model.variables, people });
      const normal = normalJoint({ ...crew });
      const known = { stature: millimetres(at(model, 0, 1)) };
      const [ours, theirs] = [crew.conditional(known), normal.conditional(known)];
      ours.mean.forEach((mean, i) => {
        expect(mean).toBeCloseTo(theirs.mean[i] ?? 0, 6);
      });
      ours.covariance.flat().forEach((value, k) => {
        expect(value).toBeCloseTo(theirs.covariance.flat()[k] ?? 0, 5);
      });
    },
  );

  test.prop([between(0.02, 0.3), between(0.02, 0.3), between(-0.9, 0.9), between(-2, 2)], runs)(
    "law: lognormal girths have the same means and covariances, and all of them above 0",
    (cvA, cvB, rho, z) => {
      const [a, b] = [850 * cvA, 1000 * cvB];
      const normal = normalJoint({
        about: { label: "x", source: "x", caveat: "" },
        variables: ["waist-girth", "hip-girth"],
        mean: [850, 1000],
        covariance: [
          [a * a, rho * a * b],
          [rho * a * b, b * b],
        ],
      });
      const skewed = withLognormal(normal, ["waist-girth", "hip-girth"]);
      skewed.covariance.flat().forEach((value, k) => {
        expect(Math.abs(value - (normal.covariance.flat()[k] ?? 0))).toBeLessThan(
          1e-8 * a * b + 1e-8 * (a + b),
        );
      });
      const all = interval(0, Number.POSITIVE_INFINITY);
      expect(skewed.boxProbability({ "waist-girth": all, "hip-girth": all }).probability).toBeCloseTo(1, 14);
      const waist = skewed.distribution("waist-girth").quantile(0.3);
      const given = skewed.conditional({ "waist-girth": millimetres(waist) });
      expect(given.mean[0]).toBeGreaterThan(0);
      expect(given.distribution("hip-girth").cumulative(1000 * Math.exp(z))).toBeLessThanOrEqual(1);
    },
  );

  test.prop([joint(3), fc.integer()], runs)("law: the same seed draws the same people", (model, seed) => {
    const draw = () => {
      const random = createRandom(seed);
      return [model.sample(random), model.sample(random)];
    };
    expect(draw()).toEqual(draw());
  });
});
