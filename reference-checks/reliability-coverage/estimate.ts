import { type Conditions, errorDefaults, safeEstimate } from "@tapewise/measurement";
import { createRandom, type Random } from "@tapewise/statistics";
import { type LengthReading, millimetres } from "@tapewise/units";

/** A way to count how often an interval held the true value, of so many. */
interface CoverageCase {
  readonly name: string;
  readonly nominal: number;
  run(runs: number, seed: number): { readonly covered: number; readonly runs: number };
}

const ERROR = { biasMm: 6, repeatMm: 8, resolutionMm: 5 };
const CONDITIONS: Conditions = { tool: "tape", measuredBy: "self", landmarksFoundAfresh: true };

function readingOf(lengthMm: number, stepMm: number): LengthReading {
  const mm = millimetres(Math.round(lengthMm / stepMm) * stepMm);
  return { mm, stepMm: millimetres(stepMm), unit: "mm", text: `${mm} mm` };
}

/** A stated error that is the true one: bias and errors normal, readings rounded to marks of 5 mm. */
function statedCase(count: number, nominal: number): CoverageCase {
  return caseOf(`${count} readings, stated error`, nominal, (random, length) => {
    const bias = ERROR.biasMm * random.normal();
    const readings = Array.from({ length: count }, () =>
      readingOf(length + bias + ERROR.repeatMm * random.normal(), ERROR.resolutionMm),
    );
    return safeEstimate({ dimension: "torso-length", readings, error: ERROR, coverageProbability: nominal });
  });
}

/**
 * The table of defaults. Each of its figures is off by `doubt` of itself from one person to the next, as a figure of
 * few degrees of freedom is; the estimate believes the table.
 */
function defaultCase(count: number, doubt: number): CoverageCase {
  const { self } = errorDefaults.hands["length along the body"];
  const { scaleHalfWidth } = errorDefaults.tools.tape;
  return caseOf(`${count} readings, defaults, figures off by ${doubt * 100} %`, 0.95, (random, length) => {
    const off = (figure: number): number => figure * Math.abs(1 + doubt * random.normal());
    const lasting =
      off(self.lastingMm) * random.normal() + off(scaleHalfWidth) * (2 * random.uniform() - 1) * length;
    const [finding, handling] = [off(self.findingMm), off(self.handlingMm)];
    const readings = Array.from({ length: count }, () =>
      readingOf(length + lasting + finding * random.normal() + handling * random.normal(), 1),
    );
    return safeEstimate({ dimension: "torso-length", readings, conditions: CONDITIONS });
  });
}

function caseOf(
  name: string,
  nominal: number,
  estimate: (random: Random, length: number) => ReturnType<typeof safeEstimate>,
): CoverageCase {
  return {
    name: `estimate, ${name}, nominal ${nominal}`,
    nominal,
    run: (runs, seed) => {
      const random = createRandom(seed).fork(name).fork(`${nominal}`);
      let covered = 0;
      for (let i = 0; i < runs; i += 1) {
        const length = 400 + 100 * random.uniform();
        const outcome = estimate(random, length);
        if (!outcome.ok) throw new Error(outcome.issues[0].message);
        const { lowerMm, upperMm } = outcome.value.coverage;
        if (lowerMm <= length && length <= upperMm) covered += 1;
      }
      return { covered, runs };
    },
  };
}

/** Coverage intervals of estimates, by counting. */
export const cases: readonly CoverageCase[] = [
  statedCase(1, 0.95),
  statedCase(2, 0.95),
  statedCase(3, 0.95),
  statedCase(10, 0.95),
  statedCase(3, 0.68),
  statedCase(3, 0.99),
  defaultCase(1, 0.25),
  defaultCase(3, 0.25),
  defaultCase(6, 0.25),
  defaultCase(3, 0),
];
