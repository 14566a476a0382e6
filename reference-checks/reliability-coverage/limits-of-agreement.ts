import {
  blandAltman,
  blandAltmanRepeats,
  type IntervalEstimate,
  type LimitsMethod,
  repeatabilityCoefficient,
} from "@tapewise/measurement";
import { createRandom, type Random } from "@tapewise/statistics";

/** A way to count how often an interval held the true value, of so many. */
interface CoverageCase {
  readonly name: string;
  readonly nominal: number;
  run(runs: number, seed: number): { readonly covered: number; readonly runs: number };
}

const BIAS = 3;
const SD = 6;

/** A case that draws a study, makes an interval and knows what it should hold. */
function caseOf(
  name: string,
  truth: number,
  interval: (random: Random) => IntervalEstimate | undefined,
): CoverageCase {
  return {
    name,
    nominal: 0.95,
    run: (runs, seed) => {
      const random = createRandom(seed).fork(name);
      let covered = 0;
      for (let i = 0; i < runs; i += 1) {
        const found = interval(random);
        if (found === undefined) throw new Error("no interval");
        if (found.lower <= truth && truth <= found.upper) covered += 1;
      }
      return { covered, runs };
    },
  };
}

function drawPairs(random: Random, n: number): readonly [number[], number[]] {
  const second = Array.from({ length: n }, () => 450 + 30 * random.normal());
  return [second.map((value) => value + BIAS + SD * random.normal()), second];
}

const simple = ([10, 20, 30, 100] as const).flatMap((n) =>
  (["exact", "approximate-1999", "approximate-1986"] satisfies LimitsMethod[]).map((method) =>
    caseOf(`upper limit, ${method}, ${n} pairs`, BIAS + 1.96 * SD, (random) => {
      const [first, second] = drawPairs(random, n);
      return blandAltman(first, second, { method }).upperLimit;
    }),
  ),
);

/** Repeats: subjects' own differences with SD 4, errors of the two ways with SD 5 and 3. */
function constantCase(
  n: number,
  repeats: readonly number[],
  end: "bias" | "lowerLimit" | "upperLimit",
): CoverageCase {
  const sd = Math.hypot(4, 5, 3);
  const truth = { bias: BIAS, lowerLimit: BIAS - 1.96 * sd, upperLimit: BIAS + 1.96 * sd }[end];
  return caseOf(`${end}, constant true value, ${n} subjects x ${repeats.join("/")}`, truth, (random) => {
    const subjects = Array.from({ length: n }, (_, i) => {
      const own = 450 + 30 * random.normal();
      const shift = BIAS + 4 * random.normal();
      const times = repeats[i % repeats.length] ?? 1;
      return {
        first: Array.from({ length: times }, () => own + shift + 5 * random.normal()),
        second: Array.from({ length: times }, () => own + 3 * random.normal()),
      };
    });
    return blandAltmanRepeats(subjects, { trueValue: "constant" })[end];
  });
}

/** Pairs with a common changing value: subjects' own differences with SD 4, a single difference with SD 5. */
function varyingCase(n: number, repeats: readonly number[], end: "bias" | "upperLimit"): CoverageCase {
  const sd = Math.hypot(4, 5);
  const truth = { bias: BIAS, upperLimit: BIAS + 1.96 * sd }[end];
  return caseOf(`${end}, varying true value, ${n} subjects x ${repeats.join("/")}`, truth, (random) => {
    const subjects = Array.from({ length: n }, (_, i) => {
      const shift = BIAS + 4 * random.normal();
      const second = Array.from(
        { length: repeats[i % repeats.length] ?? 1 },
        () => 450 + 30 * random.normal(),
      );
      return { first: second.map((value) => value + shift + 5 * random.normal()), second };
    });
    return blandAltmanRepeats(subjects, { trueValue: "varying" })[end];
  });
}

/** Confidence intervals of Bland & Altman's figures, by counting. */
export const cases: readonly CoverageCase[] = [
  caseOf("bias, 20 pairs", BIAS, (random) => blandAltman(...drawPairs(random, 20)).bias),
  ...simple,
  caseOf(
    "lower limit, exact, 20 pairs",
    BIAS - 1.96 * SD,
    (random) => blandAltman(...drawPairs(random, 20)).lowerLimit,
  ),
  caseOf("slope, 20 pairs, equal scatter", 0, (random) => {
    // Both with an error of their own, of the same size: then the difference does not depend on the mean.
    const own = Array.from({ length: 20 }, () => 450 + 30 * random.normal());
    const read = (): number[] => own.map((value) => value + 5 * random.normal());
    return blandAltman(read(), read()).slope;
  }),
  ...(
    [
      [12, [3]],
      [12, [1, 2, 5]],
      [30, [2]],
      [30, [1, 3]],
    ] as const
  ).flatMap(([n, repeats]) => [
    ...(["bias", "upperLimit"] as const).map((end) => constantCase(n, repeats, end)),
    ...(["bias", "upperLimit"] as const).map((end) => varyingCase(n, repeats, end)),
  ]),
  constantCase(12, [3], "lowerLimit"),
  caseOf("repeatability coefficient, 15 subjects x 2", 1.96 * Math.SQRT2 * SD, (random) => {
    const table = Array.from({ length: 15 }, () => {
      const own = 450 + 30 * random.normal();
      return [own + SD * random.normal(), own + SD * random.normal()];
    });
    return repeatabilityCoefficient(table).coefficient;
  }),
];
