import { type ChartDimension, type SizeChart, type SizeRanges, speakDimension } from "@tapewise/charts";
import { type DimensionBelief, type Recommendation, type SizeFit, writePercent } from "@tapewise/fit";
import { type Interval, intersect } from "@tapewise/intervals";
import type { Estimate } from "@tapewise/measurement";
import { studentTQuantile } from "@tapewise/statistics";
import { drawRuler, type RulerBody, type RulerSize } from "../picture/draw-ruler.ts";
import { wrap } from "../text/wrap.ts";
import { lengthIn, numberIn } from "./words.ts";

/** What the signs of the pictures mean. */
export const LEGEND =
  "[===] a size as stated, (...) inferred from a single length, < > no end, | a point; |--*--| you: mean and 95 % interval.";

interface Sized {
  readonly name: string;
  readonly ranges: SizeRanges;
}

/** The sizes of a chart and the body on one ruler, for each dimension that was judged. */
export function drawPictures(recommendation: Recommendation, chart: SizeChart, unit: "cm" | "in"): string[] {
  const packs = picturesOf(recommendation, chart.sizes, recommendation.sizes, unit);
  const belts = picturesOf(recommendation, chart.belts, recommendation.belt?.sizes ?? [], unit, "hip belt: ");
  return [...packs, ...belts];
}

function picturesOf(
  recommendation: Recommendation,
  sizes: readonly Sized[],
  fits: readonly SizeFit[],
  unit: "cm" | "in",
  prefix = "",
): string[] {
  const judged = new Set(fits.flatMap((fit) => fit.dimensions.map((one) => one.dimension)));
  return [...judged].flatMap((dimension) => {
    const stating = sizes.filter((size) => size.ranges[dimension] !== undefined);
    const bodies = bodiesOf(recommendation, dimension, unit);
    return [
      `  ${prefix}${speakDimension(dimension)}`,
      ...drawRuler({ sizes: stating.map((size) => rulerSize(size, dimension, fits)), bodies, unit }),
      ...meetings(stating, dimension, bodies, unit),
      "",
    ];
  });
}

function rulerSize(size: Sized, dimension: ChartDimension, fits: readonly SizeFit[]): RulerSize {
  const range = size.ranges[dimension];
  const fit = fits
    .find((one) => one.size === size.name)
    ?.dimensions.find((one) => one.dimension === dimension);
  return {
    label: size.name,
    interval: range?.interval ?? EVERYTHING,
    inferred: range?.basis === "nominal",
    note: fit === undefined ? "" : shortPercent(fit.probability),
  };
}

const EVERYTHING: Interval = {
  from: Number.NEGATIVE_INFINITY,
  to: Number.POSITIVE_INFINITY,
  fromClosed: false,
  toClosed: false,
};

/** The readings as they are, and what is believed once a prior has been weighed in. */
function bodiesOf(recommendation: Recommendation, dimension: ChartDimension, unit: "cm" | "in"): RulerBody[] {
  const estimate = recommendation.estimates.find((one) => one.dimension === dimension);
  const belief = recommendation.beliefs.find((one) => one.dimension === dimension);
  const bodies: RulerBody[] = [];
  if (estimate !== undefined) bodies.push(bodyOfEstimate(estimate, unit));
  if (belief !== undefined && (estimate === undefined || belief.from !== "readings")) {
    bodies.push(bodyOfBelief(belief, unit));
  }
  return bodies;
}

function bodyOfEstimate({ mm, coverage }: Estimate, unit: "cm" | "in"): RulerBody {
  return {
    label: "you",
    meanMm: mm,
    lowerMm: coverage.lowerMm,
    upperMm: coverage.upperMm,
    note: numberIn(mm, unit),
  };
}

function bodyOfBelief(
  { meanMm, sdMm, degreesOfFreedom, from }: DimensionBelief,
  unit: "cm" | "in",
): RulerBody {
  const half = studentTQuantile(0.975, degreesOfFreedom) * sdMm;
  return {
    label: from === "readings" ? "you" : from === "prior" ? "expected" : "with survey",
    meanMm,
    lowerMm: meanMm - half,
    upperMm: meanMm + half,
    note: numberIn(meanMm, unit),
  };
}

/** Gaps and overlaps between neighbouring sizes, where they lie within reach of the body. */
function meetings(
  sizes: readonly Sized[],
  dimension: ChartDimension,
  bodies: readonly RulerBody[],
  unit: "cm" | "in",
): string[] {
  const low = Math.min(...bodies.map((body) => body.lowerMm));
  const high = Math.max(...bodies.map((body) => body.upperMm));
  const placed = sizes
    .flatMap(({ name, ranges }) => {
      const range = ranges[dimension];
      return range === undefined ? [] : [{ name, interval: range.interval }];
    })
    .toSorted((a, b) => a.interval.from - b.interval.from || a.interval.to - b.interval.to);
  const sentences = placed.flatMap((one, index) => {
    const next = placed[index + 1];
    if (next === undefined) return [];
    const { from, to, what } = meeting(one.interval, next.interval);
    if (from > high || to < low || from === to) return [];
    return [`${one.name} and ${next.name} ${what} from ${lengthIn(from, unit)} to ${lengthIn(to, unit)}.`];
  });
  return sentences.length === 0 ? [] : wrap(sentences.join(" "), { first: "  ", rest: "  " });
}

/** Where two intervals, in order of their beginnings, overlap or leave a gap. */
function meeting(one: Interval, next: Interval): { from: number; to: number; what: string } {
  const common = intersect(one, next);
  if (common === undefined) return { from: one.to, to: next.from, what: "leave a gap" };
  return { from: common.from, to: common.to, what: "overlap" };
}

function shortPercent(probability: number): string {
  return writePercent(probability).replace("more than ", ">").replace("less than ", "<");
}
