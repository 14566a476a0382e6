import { fc, test } from "@fast-check/vitest";
import {
  correctChart,
  createEvidence,
  type Evidence,
  learnMaker,
  learnProduct,
  lengthAfter,
  type SeenOutcome,
} from "@tapewise/afterwards";
import { parseChart } from "@tapewise/charts";
import { expect } from "vitest";

const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,43-48\nL,48-53\n", {
  chart: "A",
  maker: "Gingham",
});

const outcome: fc.Arbitrary<SeenOutcome> = fc
  .record({
    maker: fc.constant("Gingham"),
    product: fc.constantFrom("A", "B"),
    dimension: fc.constant("torso-length" as const),
    fromMm: fc.constantFrom(380, 430, 480),
    side: fc.constantFrom("below" as const, "inside" as const, "above" as const),
    meanMm: fc.double({ min: 360, max: 540, noNaN: true }),
    sdMm: fc.double({ min: 0, max: 30, noNaN: true }),
  })
  .map((one) => ({ ...one, toMm: one.fromMm + 50 }));
const outcomes = fc.array(outcome, { minLength: 1, maxLength: 30 });

const A = { maker: "Gingham", product: "A" };

function learnFrom(list: readonly SeenOutcome[]): Evidence {
  const evidence = createEvidence();
  for (const one of list) evidence.add(one);
  return evidence;
}

test.prop([outcomes, fc.nat()], { numRuns: 30 })(
  "law: the order of outcomes leaves no trace, to the last bit",
  (list, seed) => {
    const turned = [...list.slice(seed % list.length), ...list.slice(0, seed % list.length)].reverse();
    const [one, other] = [learnFrom(list), learnFrom(turned)];
    expect(learnProduct(other, A, "torso-length")).toEqual(learnProduct(one, A, "torso-length"));
    expect(correctChart(chart, other)).toEqual(correctChart(chart, one));
  },
);

test.prop([outcomes, outcomes], { numRuns: 30 })(
  "law: forgetting outcomes gives, to the last bit, what there would be had they never come",
  (kept, forgotten) => {
    const evidence = learnFrom([...forgotten, ...kept]);
    for (const one of forgotten) evidence.remove(one);
    expect(learnProduct(evidence, A, "torso-length")).toEqual(
      learnProduct(learnFrom(kept), A, "torso-length"),
    );
    expect(evidence.tablesOf(A, "torso-length")).toEqual(learnFrom(kept).tablesOf(A, "torso-length"));
  },
);

test.prop([outcomes], { numRuns: 30 })(
  "law: mirrored outcomes give the mirrored offset and the same width",
  (list) => {
    const turn = { below: "above", inside: "inside", above: "below" } as const;
    const mirrored = list.map((one) => ({
      ...one,
      fromMm: 1000 - one.toMm,
      toMm: 1000 - one.fromMm,
      meanMm: 1000 - one.meanMm,
      side: turn[one.side],
    }));
    const [one, other] = [learnFrom(list), learnFrom(mirrored)].map((evidence) =>
      learnProduct(evidence, A, "torso-length"),
    );
    expect(other?.offsetMm.mean).toBeCloseTo(-(one?.offsetMm.mean ?? 0), 5);
    expect(other?.offsetMm.upper).toBeCloseTo(-(one?.offsetMm.lower ?? 0), 5);
    expect(other?.offsetMm.sd).toBeCloseTo(one?.offsetMm.sd ?? 0, 5);
    expect(other?.widthFactor.mean).toBeCloseTo(one?.widthFactor.mean ?? 0, 6);
    expect(other?.asPrintedProbability).toBeCloseTo(one?.asPrintedProbability ?? 0, 6);
  },
);

test.prop([fc.integer({ min: 5, max: 40 }), fc.constantFrom(-15, 0, 15)], { numRuns: 15 })(
  "law: more evidence that says the same makes the interval narrower",
  (times, offset) => {
    // Bodies all over the range, kept where a pack with this offset takes them.
    const bodies = [400, 420, 440, 460, 480, 500, 520];
    const consistent = bodies.map((meanMm): SeenOutcome => {
      const side = meanMm < 430 + offset ? "below" : meanMm > 480 + offset ? "above" : "inside";
      return { ...A, dimension: "torso-length", fromMm: 430, toMm: 480, side, meanMm, sdMm: 8 };
    });
    const some = learnProduct(learnFrom(consistent), A, "torso-length");
    const many = learnProduct(
      learnFrom(Array.from({ length: times }, () => consistent).flat()),
      A,
      "torso-length",
    );
    expect(many.offsetMm.sd).toBeLessThan(some.offsetMm.sd);
    expect(many.offsetMm.upper - many.offsetMm.lower).toBeLessThan(some.offsetMm.upper - some.offsetMm.lower);
    expect(many.widthFactor.sd).toBeLessThan(some.widthFactor.sd);
  },
);

test.prop([outcomes], { numRuns: 20 })("law: every figure is finite and every interval in order", (list) => {
  const evidence = learnFrom(list);
  for (const learned of [
    learnProduct(evidence, A, "torso-length"),
    learnProduct(evidence, { ...A, product: "C" }, "torso-length"),
    learnMaker(evidence, "Gingham", "torso-length"),
  ]) {
    for (const { mean, sd, lower, upper } of [learned.offsetMm, learned.widthFactor]) {
      expect([mean, sd, lower, upper].every(Number.isFinite)).toBe(true);
      expect(lower).toBeLessThan(upper);
    }
    expect(learned.asPrintedProbability).toBeGreaterThanOrEqual(0);
    expect(learned.asPrintedProbability).toBeLessThanOrEqual(1);
  }
});

test.prop([outcome], { numRuns: 50 })(
  "law: a pack that was too long tells of a shorter body, and one that was too short of a longer one",
  (seen) => {
    const evidence = createEvidence();
    const below = lengthAfter(evidence, { ...seen, side: "below" });
    const above = lengthAfter(evidence, { ...seen, side: "above" });
    expect(below.meanMm).toBeLessThanOrEqual(seen.meanMm + 1e-9);
    expect(above.meanMm).toBeGreaterThanOrEqual(seen.meanMm - 1e-9);
  },
);

test.prop([outcomes], { numRuns: 20 })(
  "law: outcomes of one maker leave every other chart as printed",
  (list) => {
    const foreign = { ...chart, maker: "Marmalade" };
    expect(correctChart(foreign, learnFrom(list)).chart).toBe(foreign);
  },
);
