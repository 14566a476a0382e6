import { correctChart, createEvidence, type LearnedChart, learnProduct } from "@tapewise/afterwards";
import type { Random } from "@tapewise/statistics";
import { type Member, pickFor } from "./crew.ts";
import { liveThrough, printed, type Truth, trueChart } from "./makers.ts";
import { type Wrong, wrongAmong } from "./wrong-share.ts";

/** What is known and how the choices are after so many outcomes. */
export interface Checkpoint {
  readonly outcomes: number;
  readonly learned: LearnedChart;
  readonly wrong: Wrong;
}

/** How one maker is followed. */
export interface FollowOptions {
  readonly truth: Truth;
  readonly crew: readonly Member[];
  /** Those whom choices are counted on; they report nothing. */
  readonly judged: readonly Member[];
  readonly checkpoints: readonly number[];
  readonly random: Random;
}

/** Outcomes between two looks at what was learned. */
const AT_ONCE = 10;

/**
 * People choose one after the other by what was learned until then, anew after every ten outcomes, and report what
 * came of it.
 */
export function followMaker({
  truth,
  crew,
  judged,
  checkpoints,
  random,
}: FollowOptions): readonly Checkpoint[] {
  const evidence = createEvidence();
  const actual = trueChart(truth);
  const last = Math.max(...checkpoints);
  const found: Checkpoint[] = [];
  const byPrinted = wrongAmong(judged, printed, actual);
  let chart = printed;
  for (let outcomes = 0; outcomes < last; ) {
    const member = crew[random.integer(0, crew.length - 1)];
    if (member === undefined) throw new Error("there is nobody to choose a size for");
    const seen = liveThrough(member, pickFor(member, chart), printed, actual, random);
    if (seen === undefined) continue;
    evidence.add(seen);
    outcomes += 1;
    if (outcomes % AT_ONCE === 0) chart = correctChart(printed, evidence).chart;
    if (!checkpoints.includes(outcomes)) continue;
    const learned = learnProduct(
      evidence,
      { maker: "Gingham Clockwork", product: printed.chart },
      "torso-length",
    );
    found.push({
      outcomes,
      learned,
      wrong: chart === printed ? byPrinted : wrongAmong(judged, chart, actual),
    });
  }
  return found;
}
