import { createRandom } from "@tapewise/statistics";
import { drawCrew, type Member } from "./crew.ts";
import { type Checkpoint, followMaker } from "./follow-maker.ts";
import { followPrior, type Held } from "./follow-prior.ts";
import { printed, type Truth, trueChart } from "./makers.ts";
import { type Wrong, wrongAmong } from "./wrong-share.ts";

/** How large the study is. */
export interface StudySize {
  readonly seed: number;
  /** People who may choose a size. */
  readonly crew: number;
  /** Others on whom wrong sizes are counted. */
  readonly judged: number;
  readonly checkpoints: readonly number[];
  /** Makers for each truth. */
  readonly makers: number;
  /** Makers whose charts are as printed. */
  readonly honestMakers: number;
  /** Makers drawn from the model. */
  readonly drawnMakers: number;
}

/** Makers with one truth. */
export interface TruthRuns {
  readonly truth: Truth;
  /** Wrong sizes by the printed chart, and by the true one: the floor of those who know it. */
  readonly byPrinted: Wrong;
  readonly byTruth: Wrong;
  readonly runs: readonly (readonly Checkpoint[])[];
}

/** Everything that was run. */
export interface Study {
  readonly size: StudySize;
  readonly truths: readonly TruthRuns[];
  readonly honest: TruthRuns;
  readonly drawn: readonly { readonly outcomes: number; readonly held: readonly Held[] }[];
}

/** True offsets in mm, and width factors. */
const OFFSETS: readonly number[] = [-20, -10, 0, 10, 20];
const WIDTHS: readonly number[] = [0.8, 1, 1.2];

/** Runs everything; the same seed gives the same figures. */
export function runStudy(size: StudySize, onTruth: (truth: Truth) => void = () => {}): Study {
  const random = createRandom(size.seed);
  const people = drawCrew(size.crew + size.judged, random.fork("crew"));
  const judged = people.slice(0, size.judged);
  const crew = people.slice(size.judged);
  const follow = (truth: Truth, makers: number, label: string): TruthRuns => {
    onTruth(truth);
    const actual = trueChart(truth);
    return {
      truth,
      byPrinted: wrongAmong(judged, printed, actual),
      byTruth: wrongAmong(judged, actual, actual),
      runs: Array.from({ length: makers }, (_, i) =>
        followMaker({
          truth,
          crew,
          judged,
          checkpoints: size.checkpoints,
          random: random.fork(label).fork(`${truth.offsetMm} ${truth.widthFactor}`).fork(i),
        }),
      ),
    };
  };
  return {
    size,
    truths: OFFSETS.flatMap((offsetMm) =>
      WIDTHS.map((widthFactor) => follow({ offsetMm, widthFactor }, size.makers, "truth")),
    ),
    honest: follow({ offsetMm: 0, widthFactor: 1 }, size.honestMakers, "honest"),
    drawn: drawnMakers(crew, size),
  };
}

function drawnMakers(crew: readonly Member[], { drawnMakers: makers, seed }: StudySize): Study["drawn"] {
  return [10, 30, 100].map((outcomes) => ({
    outcomes,
    held: Array.from({ length: makers }, (_, i) =>
      followPrior(crew, outcomes, createRandom(seed).fork("drawn").fork(outcomes).fork(i)),
    ),
  }));
}
