import { type charts, coverage, intervals, type landmarks, type outcome, population, units } from "tapewise";
import { type FitsState, MOST_CUTS } from "./fits-state.ts";

/** What the worker is asked: the fields that an answer depends on, and the chart. */
export interface FitsQuestion {
  readonly state: Pick<
    FitsState,
    "people" | "women" | "tallWomen" | "tallMen" | "members" | "chance" | "span"
  >;
  readonly chart: charts.SizeChart | undefined;
}

/** What is wrong with a field, in the library's words or as a code of the page's own. */
export interface FitsIssue {
  readonly field: string | undefined;
  readonly issue?: outcome.Issue;
  readonly code?: "stature" | "members" | "chance" | "span" | "many";
}

/** One size in one dimension. */
export interface FitsRow {
  readonly name: string;
  readonly fromMm: number;
  readonly toMm: number;
  readonly isInferred: boolean;
  /** People whom the size fits by all that was judged. */
  readonly served: coverage.Share;
}

/** How people are spread over one dimension, and what the chart covers of it. */
export interface FitsFigure {
  readonly dimension: landmarks.DimensionId;
  readonly fromMm: number;
  readonly toMm: number;
  /** Densities per mm at evenly spaced lengths from one end to the other. */
  readonly density: readonly number[];
  /** The same of women and men, each times its share; none where there is one kind of people. */
  readonly parts: readonly { readonly cut: "women" | "men"; readonly density: readonly number[] }[];
  readonly covered: readonly { readonly fromMm: number; readonly toMm: number }[];
  readonly rows: readonly FitsRow[];
  readonly outside: coverage.Outside;
}

/** Where a number of sizes would be best cut. */
export type FitsCut = Pick<coverage.CutPlan, "count" | "ranges" | "served">;

/** All that the page shows; absent parts could not be worked out. */
export interface FitsAnswer {
  readonly state: FitsQuestion["state"];
  readonly issues: readonly FitsIssue[];
  readonly chart: string | undefined;
  readonly sizes: number;
  readonly coverage: coverage.Coverage | undefined;
  readonly figures: readonly FitsFigure[];
  readonly stock: coverage.Stock | undefined;
  readonly shares: coverage.StockShares | undefined;
  readonly spanMm: number | undefined;
  /** The best cuts of every number up to the most. */
  readonly cuts: readonly FitsCut[];
  /** How many people the survey measured. */
  readonly measured: Readonly<Partial<Record<population.ReferenceCut, number>>>;
}

/** More sizes than any maker has: the boxes that they cut people into grow faster than they do. */
const MOST_SIZES = 24;
const MOST_MEMBERS = 2000;
const POINTS = 120;

/** Holds a chart against people, stocks for a crew, and cuts sizes anew. */
export function answerFits({ state, chart }: FitsQuestion): FitsAnswer {
  const issues: FitsIssue[] = [];
  const cuts: readonly population.ReferenceCut[] =
    state.people === "both" ? ["women", "men"] : [state.people];
  const statures = {
    women: cuts.includes("women") ? readStature("tallWomen", state.tallWomen, issues) : undefined,
    men: cuts.includes("men") ? readStature("tallMen", state.tallMen, issues) : undefined,
  };
  const girths = girthsOf(chart);
  const models = cuts.map((cut) => modelOf(cut, statures[cut], girths));
  const [first, second] = models;
  const weights = { women: state.women / 100, men: 1 - state.women / 100 };
  if (first === undefined) throw new RangeError("nobody to hold the chart against");
  const people =
    second === undefined
      ? first
      : population.mixtureJoint({
          about: { ...first.about, label: "women and men" },
          parts: [
            { weight: weights.women, model: first },
            { weight: weights.men, model: second },
          ],
        });
  const counts = cuts.map((cut) =>
    cut === "women" ? population.womenReference.count : population.menReference.count,
  );
  const parts =
    second === undefined
      ? []
      : [
          { cut: "women" as const, weight: weights.women, model: first },
          { cut: "men" as const, weight: weights.men, model: second },
        ];
  const members = readCount(state.members, issues);
  const chance = readChance(state.chance, issues);
  const spanMm = readSpan(state.span, issues);
  const held = chart === undefined ? undefined : withFewSizes(chart, issues);
  const outcome =
    held === undefined
      ? undefined
      : coverage.chartCoverage(held, people, {
          ...(isQuick(held, people) ? { survey: { people: counts } } : {}),
        });
  issues.push(...(outcome?.issues ?? []).map((issue) => ({ field: undefined, issue })));
  const served = outcome?.ok === true ? outcome.value : undefined;
  const request = members === undefined || chance === undefined ? undefined : { members, chance };
  const isServed = held !== undefined && served !== undefined && served.served.share > 0;
  const stock = isServed && request !== undefined ? coverage.stockFor(held, people, request) : undefined;
  const shares = isServed ? coverage.stockShares(held, people) : undefined;
  return {
    state,
    issues,
    chart: chart?.chart,
    sizes: chart?.sizes.length ?? 0,
    coverage: served,
    figures:
      held === undefined || served === undefined
        ? []
        : served.outside.map((outside) => figureOf(held, served, outside, people, parts)),
    stock: stock?.ok === true ? stock.value : undefined,
    shares: shares?.ok === true ? shares.value : undefined,
    spanMm,
    cuts: spanMm === undefined ? [] : cutsOf(people, spanMm),
    measured: Object.fromEntries(cuts.map((cut, place) => [cut, counts[place] ?? 0])),
  };
}

const GIRTHS = ["hip-girth", "waist-girth", "chest-girth"] as const;

/** Girths that the chart states: a lognormal curve comes nearer to those who were counted than a normal one. */
function girthsOf(chart: charts.SizeChart | undefined): readonly (typeof GIRTHS)[number][] {
  const stated = new Set(
    [...(chart?.sizes ?? []), ...(chart?.belts ?? [])].flatMap(({ ranges }) => Object.keys(ranges)),
  );
  return GIRTHS.filter(
    (girth) => stated.has(girth) || (girth === "hip-girth" && stated.has("unstated-hip-girth")),
  );
}

/** The surveyed people of a cut; of another mean stature, with the survey's spread, where one is stated. */
function modelOf(
  cut: population.ReferenceCut,
  statureMm: number | undefined,
  girths: readonly (typeof GIRTHS)[number][],
): population.JointModel {
  const surveyed = population.referencePopulation(cut);
  const normal =
    statureMm === undefined
      ? surveyed
      : population.reweight(
          surveyed,
          population.normalJoint({
            about: { label: "a stated stature", source: "stated", caveat: "" },
            variables: ["stature"],
            mean: [statureMm],
            covariance: [[surveyed.distribution("stature").sd ** 2]],
          }),
        );
  return girths.length === 0 ? normal : population.withLognormal(normal, girths);
}

/** Mean statures beyond these are of no grown people, and the survey says nothing of them. */
const LEAST_STATURE_MM = 1400;
const MOST_STATURE_MM = 2050;

function readStature(field: "tallWomen" | "tallMen", text: string, issues: FitsIssue[]): number | undefined {
  if (text.trim() === "") return undefined;
  const read = units.safeParseLength(text);
  issues.push(...read.issues.map((issue) => ({ field, issue })));
  if (!read.ok) return undefined;
  if (read.value.mm >= LEAST_STATURE_MM && read.value.mm <= MOST_STATURE_MM) return read.value.mm;
  issues.push({ field, code: "stature" });
  return undefined;
}

function readCount(text: string, issues: FitsIssue[]): number | undefined {
  const members = /^\s*(\d{1,5})\s*$/.exec(text)?.[1];
  const count = Number(members ?? 0);
  if (count >= 1 && count <= MOST_MEMBERS) return count;
  issues.push({ field: "members", code: "members" });
  return undefined;
}

function readChance(text: string, issues: FitsIssue[]): number | undefined {
  const percent = /^\s*(\d{1,2}(?:[.,]\d{1,3})?)\s*%?\s*$/.exec(text)?.[1]?.replace(",", ".");
  const chance = Number(percent ?? 0) / 100;
  if (chance > 0 && chance < 1) return chance;
  issues.push({ field: "chance", code: "chance" });
  return undefined;
}

/** A span below a step of the grid, or beyond all people, is none. */
const LEAST_SPAN_MM = 5;
const MOST_SPAN_MM = 300;

function readSpan(text: string, issues: FitsIssue[]): number | undefined {
  const read = units.safeParseLength(text);
  issues.push(...read.issues.map((issue) => ({ field: "span", issue })));
  if (!read.ok) return undefined;
  if (read.value.mm >= LEAST_SPAN_MM && read.value.mm <= MOST_SPAN_MM) return read.value.mm;
  issues.push({ field: "span", code: "span" });
  return undefined;
}

function withFewSizes(chart: charts.SizeChart, issues: FitsIssue[]): charts.SizeChart {
  const { sizes, belts } = chart;
  if (sizes.length <= MOST_SIZES && belts.length <= MOST_SIZES) return chart;
  issues.push({ field: undefined, code: "many" });
  return { ...chart, sizes: sizes.slice(0, MOST_SIZES), belts: belts.slice(0, MOST_SIZES) };
}

/** Bands repeat the survey hundreds of times, which takes long where many sizes cut several dimensions. */
function isQuick({ sizes, belts }: charts.SizeChart, people: population.JointModel): boolean {
  const known = new Set<string>(people.variables);
  const stated = new Set([...sizes, ...belts].flatMap(({ ranges }) => Object.keys(ranges)));
  const judged = [...stated].filter((name) => known.has(name) || name === "unstated-hip-girth").length;
  return judged < 2 || (sizes.length + belts.length) ** judged <= 64;
}

function figureOf(
  chart: charts.SizeChart,
  served: coverage.Coverage,
  outside: coverage.Outside,
  people: population.JointModel,
  parts: readonly {
    readonly cut: "women" | "men";
    readonly weight: number;
    readonly model: population.JointModel;
  }[],
): FitsFigure {
  const { dimension } = outside;
  const ranges: intervals.Interval[] = [];
  const rows = [...chart.sizes, ...chart.belts].flatMap(({ name, ranges: stated }): FitsRow[] => {
    const range = stated[dimension] ?? (dimension === "hip-girth" ? stated["unstated-hip-girth"] : undefined);
    if (range === undefined) return [];
    ranges.push(range.interval);
    const { from, to } = range.interval;
    const share = served.sizes.find(({ size }) => size === name)?.served ?? { share: 0 };
    return [{ name, fromMm: from, toMm: to, isInferred: range.basis === "nominal", served: share }];
  });
  const distribution = people.distribution(dimension);
  const low = distribution.quantile(0.0005);
  const high = distribution.quantile(0.9995);
  const ends = rows.flatMap(({ fromMm, toMm }) => [fromMm, toMm]).filter((mm) => mm > 0 && mm < 1e6);
  // Ranges far out are cut off, so that the people stay in sight.
  const reach = (high - low) / 4;
  const fromMm = Math.max(Math.min(low, ...ends), low - reach);
  const toMm = Math.min(Math.max(high, ...ends), high + reach);
  const lengths = Array.from({ length: POINTS + 1 }, (_, k) => fromMm + ((toMm - fromMm) * k) / POINTS);
  return {
    dimension,
    fromMm,
    toMm,
    density: lengths.map((mm) => distribution.density(mm)),
    parts: parts.map(({ cut, weight, model }) => {
      const own = model.distribution(dimension);
      return { cut, density: lengths.map((mm) => weight * own.density(mm)) };
    }),
    covered: intervals.union(...ranges).map(({ from, to }) => ({ fromMm: from, toMm: to })),
    rows,
    outside,
  };
}

function cutsOf(people: population.JointModel, spanMm: number): readonly FitsCut[] {
  const { growth } = coverage.cutSizes({
    population: people,
    dimension: "torso-length",
    count: MOST_CUTS,
    goal: "served",
    spanMm,
  });
  return growth.map(({ count, ranges, served }) => ({ count, ranges, served }));
}
