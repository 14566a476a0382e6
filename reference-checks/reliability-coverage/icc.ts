import {
  createStudy,
  type IccForm,
  intraclassCorrelations,
  type Study,
  type StudyReading,
  safeComponentIcc,
} from "@tapewise/measurement";
import { createRandom, type Random } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";

/** How often an interval held the true value, of so many. */
interface Count {
  readonly covered: number;
  readonly runs: number;
}

/** A way to count. */
interface CoverageCase {
  readonly name: string;
  readonly nominal: number;
  run(runs: number, seed: number): Count;
}

/** Standard deviations in mm, and the size of the study. */
interface Design {
  readonly subjects: number;
  readonly measurers: number;
  readonly repeats: number;
  readonly subject: number;
  readonly measurer: number;
  readonly interaction: number;
  readonly error: number;
  /** Share of the cells of subject and measurer that are missing, the same ones in every run. */
  readonly missing?: number;
  /** Readings of a cell drawn from 1 to `repeats`. */
  readonly unequal?: boolean;
}

const torso = { subject: 30, measurer: 4, interaction: 0, error: 8, repeats: 1 };
const tables: readonly Design[] = [
  { ...torso, subjects: 10, measurers: 3 },
  { ...torso, subjects: 30, measurers: 3 },
  { ...torso, subjects: 30, measurers: 4 },
  { ...torso, subjects: 100, measurers: 5 },
  { ...torso, subjects: 20, measurers: 2 },
  { ...torso, subjects: 20, measurers: 4, subject: 10, measurer: 5, error: 10 },
  { ...torso, subjects: 30, measurers: 3, measurer: 8 },
  { ...torso, subjects: 20, measurers: 3, measurer: 15 },
  { ...torso, subjects: 30, measurers: 5, measurer: 15 },
];
const studies: readonly Design[] = [
  { ...torso, subjects: 20, measurers: 4 },
  { ...torso, subjects: 10, measurers: 3 },
  { ...torso, subjects: 20, measurers: 3, measurer: 15 },
  { ...torso, subjects: 20, measurers: 3, measurer: 15, missing: 0.2 },
  { ...torso, subjects: 30, measurers: 4, missing: 0.2 },
  { ...torso, subjects: 20, measurers: 3, missing: 0.3 },
  { ...torso, subjects: 20, measurers: 4, subject: 10, measurer: 5, error: 10, missing: 0.2 },
  { ...torso, subjects: 20, measurers: 3, interaction: 4, repeats: 3 },
  { ...torso, subjects: 20, measurers: 4, interaction: 4, repeats: 3, missing: 0.2, unequal: true },
  { ...torso, subjects: 20, measurers: 3, measurer: 0, missing: 0.2 },
];

/** Those of means are the same intervals, stepped up. */
const forms: readonly IccForm[] = ["1,1", "2,1", "3,1"];

/** Confidence intervals of intraclass correlations, by counting. */
export const cases: readonly CoverageCase[] = [
  ...tables.flatMap((design) => forms.map((form) => tableCase(design, form))),
  ...studies.flatMap((design) =>
    (["agreement", "consistency"] as const).map((kind) => studyCase(design, kind)),
  ),
];

function describe(design: Design): string {
  const { subjects, measurers, repeats, subject, measurer, interaction, error } = design;
  const gaps = design.missing === undefined ? "" : `, ${design.missing * 100} % missing`;
  const unequal = design.unequal ? ", unequal" : "";
  return `${subjects} x ${measurers} x ${repeats}${gaps}${unequal}, SD ${subject}/${measurer}/${interaction}/${error}`;
}

function truthOf({ subject, measurer, interaction, error }: Design, form: IccForm, k: number): number {
  const own = subject ** 2;
  const noise = interaction ** 2 + error ** 2 + (form.startsWith("3") ? 0 : measurer ** 2);
  return own / (own + (form.endsWith("k") ? noise / k : noise));
}

function tableCase(design: Design, form: IccForm): CoverageCase {
  return {
    name: `ICC(${form}), ${describe(design)}`,
    nominal: 0.95,
    run: (runs, seed) => {
      const random = createRandom(seed).fork(describe(design));
      const truth = truthOf(design, form, design.measurers);
      return count(runs, () => {
        const { lower, upper } = intraclassCorrelations(drawTable(random, design, form.startsWith("1"))).icc[
          form
        ];
        return lower <= truth && truth <= upper;
      });
    },
  };
}

function drawTable(random: Random, design: Design, nested: boolean): number[][] {
  const measurers = Array.from({ length: design.measurers }, () => design.measurer * random.normal());
  return Array.from({ length: design.subjects }, () => {
    const own = 450 + design.subject * random.normal();
    // Form 1: every subject meets measurers of its own.
    return measurers.map(
      (shift) => own + (nested ? design.measurer * random.normal() : shift) + design.error * random.normal(),
    );
  });
}

function studyCase(design: Design, kind: "agreement" | "consistency"): CoverageCase {
  return {
    name: `component ICC, ${kind}, ${describe(design)}`,
    nominal: 0.95,
    run: (runs, seed) => {
      const random = createRandom(seed).fork(describe(design));
      const truth = truthOf(design, kind === "agreement" ? "2,1" : "3,1", design.measurers);
      return count(runs, () => {
        const outcome = safeComponentIcc(drawStudy(random, design), { random, draws: 1500 });
        if (!outcome.ok) throw new Error(outcome.issues[0].message);
        const { lower, upper } = outcome.value[kind];
        return lower <= truth && truth <= upper;
      });
    },
  };
}

function drawStudy(random: Random, design: Design): Study {
  // The same stream in every run: the gaps belong to the design.
  const gaps = createRandom(5).fork(describe(design));
  const shifts = Array.from({ length: design.measurers }, () => design.measurer * random.normal());
  const readings: StudyReading[] = [];
  for (let s = 0; s < design.subjects; s += 1) {
    const own = 450 + design.subject * random.normal();
    const kept = gaps.integer(0, design.measurers - 1);
    shifts.forEach((shift, m) => {
      const drop = gaps.uniform() < (design.missing ?? 0) && m !== kept;
      const times = design.unequal ? gaps.integer(1, design.repeats) : design.repeats;
      const pair = own + shift + design.interaction * random.normal();
      for (let repeat = 1; repeat <= times; repeat += 1) {
        const mm = millimetres(pair + design.error * random.normal());
        if (!drop) readings.push({ subject: `s${s}`, measurer: `m${m}`, repeat, mm });
      }
    });
  }
  return createStudy({ readings });
}

function count(runs: number, held: () => boolean): Count {
  let covered = 0;
  for (let i = 0; i < runs; i += 1) if (held()) covered += 1;
  return { covered, runs };
}
