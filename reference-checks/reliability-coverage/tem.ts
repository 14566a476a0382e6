import {
  createStudy,
  type IntervalEstimate,
  type Study,
  type StudyReading,
  safePrecision,
  safeTechnicalError,
} from "@tapewise/measurement";
import { createRandom, type Random } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";

/** A way to count how often an interval held the true value, of so many. */
interface CoverageCase {
  readonly name: string;
  readonly nominal: number;
  run(runs: number, seed: number): { readonly covered: number; readonly runs: number };
}

/** Standard deviations in mm, and the size of the study. */
interface Design {
  readonly subjects: number;
  readonly measurers: number;
  readonly repeats: number;
  readonly measurer: number;
  readonly interaction: number;
  readonly error: number;
  /** Share of all readings that are missing, others in every run. */
  readonly missing?: number;
}

const SUBJECT_MM = 30;
const MEAN_MM = 450;

const small: Design = { subjects: 10, measurers: 2, repeats: 2, measurer: 4, interaction: 3, error: 5 };
const designs: readonly Design[] = [
  small,
  { ...small, measurer: 0, interaction: 0 },
  { ...small, measurer: 12 },
  { ...small, measurers: 3, subjects: 20 },
  { ...small, measurers: 4, subjects: 20, repeats: 3 },
  { ...small, measurers: 4, subjects: 20, measurer: 12 },
  { ...small, measurers: 8, subjects: 30 },
  { ...small, measurers: 4, subjects: 10, repeats: 1 },
  { ...small, measurers: 4, subjects: 20, repeats: 1, measurer: 0, interaction: 0 },
  { ...small, measurers: 3, subjects: 20, missing: 0.2 },
  { ...small, measurers: 4, subjects: 20, repeats: 3, missing: 0.3 },
  { ...small, measurers: 8, subjects: 20, measurer: 12, repeats: 1, missing: 0.4 },
];

/** A study drawn from its variance components. */
function drawStudy(random: Random, design: Design): Study {
  const offsets = Array.from({ length: design.measurers }, () => design.measurer * random.normal());
  const readings: StudyReading[] = [];
  for (let s = 0; s < design.subjects; s++) {
    const length = MEAN_MM + SUBJECT_MM * random.normal();
    for (const [m, offset] of offsets.entries()) {
      const cell = length + offset + design.interaction * random.normal();
      for (let repeat = 1; repeat <= design.repeats; repeat++) {
        const mm = millimetres(cell + design.error * random.normal());
        if (random.uniform() >= (design.missing ?? 0)) {
          readings.push({ subject: `s${s}`, measurer: `m${m}`, repeat, mm });
        }
      }
    }
  }
  return createStudy({ readings });
}

type Figure = "one measurer" | "intra" | "inter" | "total" | "repeatability";

function nameOf(figure: Figure, design: Design): string {
  const { subjects, measurers, repeats, measurer, interaction, error, missing = 0 } = design;
  const size = `${subjects} subjects × ${measurers} measurers × ${repeats}`;
  const sds = `SD ${measurer}, ${interaction}, ${error} mm`;
  return `TEM ${figure}, ${size}, ${sds}, ${100 * missing} % missing`;
}

function intervalOf(figure: Figure, study: Study, nominal: number): IntervalEstimate | undefined {
  if (figure === "repeatability") {
    const outcome = safePrecision(study, { confidence: nominal });
    return outcome.ok ? outcome.value.repeatability : undefined;
  }
  const outcome = safeTechnicalError(study, { confidence: nominal });
  if (!outcome.ok) return undefined;
  const { perMeasurer, intra, inter, total } = outcome.value;
  return { "one measurer": perMeasurer[0]?.tem, intra, inter, total }[figure]?.mm;
}

/** Of the inter the true value depends on which readings are missing; without missing ones it is this. */
function truthOf(figure: Figure, { measurer, interaction, error, repeats }: Design): number {
  if (figure === "inter") return Math.hypot(measurer, interaction, error / Math.sqrt(repeats));
  return figure === "total" ? Math.hypot(measurer, interaction, error) : error;
}

/** One case: the interval of a figure in a design. */
export function temCase(figure: Figure, design: Design, nominal = 0.95): CoverageCase {
  const name = nameOf(figure, design);
  return {
    name,
    nominal,
    run: (runs, seed) => {
      const random = createRandom(seed).fork(name);
      const truth = truthOf(figure, design);
      let covered = 0;
      for (let i = 0; i < runs; i++) {
        const found = intervalOf(figure, drawStudy(random, design), nominal);
        if (found === undefined) throw new Error(`no interval: ${name}`);
        if (found.lower <= truth && truth <= found.upper) covered += 1;
      }
      return { covered, runs };
    },
  };
}

/** Intervals of technical errors of measurement. */
export const cases: readonly CoverageCase[] = designs.flatMap((design) => {
  const within: readonly Figure[] = design.repeats > 1 ? ["one measurer", "intra", "repeatability"] : [];
  const between: readonly Figure[] =
    design.missing === undefined ? ["inter", "total"] : design.repeats > 1 ? ["total"] : ["inter"];
  return [...within, ...between].map((figure) => temCase(figure, design));
});
