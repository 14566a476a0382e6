import {
  createEvidence,
  evidenceDefaults,
  type Learned,
  learnMaker,
  learnProduct,
} from "@tapewise/afterwards";
import type { Random } from "@tapewise/statistics";
import { type Member, pickFor } from "./crew.ts";
import { liveThrough, named, printed, trueChart } from "./makers.ts";

/** Whether intervals hold what is true. */
export interface Held {
  readonly makerOffset: boolean;
  readonly makerWidth: boolean;
  readonly productOffset: boolean;
  readonly productWidth: boolean;
  /** Of a product that nobody has reported anything of. */
  readonly freshOffset: boolean;
}

const PRODUCTS = 3;

/** A maker drawn from the model with three products, each with as many outcomes, and a fourth without any. */
export function followPrior(crew: readonly Member[], outcomes: number, random: Random): Held {
  const scale = evidenceDefaults.backLength;
  const { reachMm, logReach } = scale;
  const maker = {
    offsetMm: drawWithin(reachMm, () => scale.makerOffsetSdMm * random.normal()),
    logWidth: drawWithin(logReach, () => scale.makerLogWidthSd * random.normal()),
  };
  const evidence = createEvidence();
  const truths = Array.from({ length: PRODUCTS + 1 }, () => ({
    offsetMm: drawWithin(reachMm, () => maker.offsetMm + scale.productOffsetSdMm * random.normal()),
    widthFactor: Math.exp(
      drawWithin(logReach, () => maker.logWidth + scale.productLogWidthSd * random.normal()),
    ),
  }));
  for (const [place, truth] of truths.slice(0, PRODUCTS).entries()) {
    const [chart, actual] = [named(`Accordion ${place}`), trueChart(truth)];
    for (let count = 0; count < outcomes; ) {
      const member = crew[random.integer(0, crew.length - 1)];
      if (member === undefined) throw new Error("there is nobody to choose a size for");
      const seen = liveThrough(member, pickFor(member, printed), chart, actual, random);
      if (seen === undefined) continue;
      evidence.add(seen);
      count += 1;
    }
  }
  const name = printed.maker ?? "";
  const general = learnMaker(evidence, name, "torso-length");
  const first = learnProduct(evidence, { maker: name, product: "Accordion 0" }, "torso-length");
  const fresh = learnProduct(evidence, { maker: name, product: `Accordion ${PRODUCTS}` }, "torso-length");
  return {
    makerOffset: holds(general.offsetMm, maker.offsetMm),
    makerWidth: holds(general.widthFactor, Math.exp(maker.logWidth)),
    productOffset: holds(first.offsetMm, truths[0]?.offsetMm),
    productWidth: holds(first.widthFactor, truths[0]?.widthFactor),
    freshOffset: holds(fresh.offsetMm, truths[PRODUCTS]?.offsetMm),
  };
}

/** Draws until something lies where the model looks for it. */
function drawWithin(reach: number, draw: () => number): number {
  for (;;) {
    const value = draw();
    if (Math.abs(value) <= reach) return value;
  }
}

/** Whether the middle 90 % hold a value. */
export function holds({ lower, upper }: Learned, value: number | undefined): boolean {
  return value !== undefined && lower <= value && value <= upper;
}
