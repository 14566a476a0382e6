import { afterwards, type charts, fit, statistics } from "tapewise";
import type { ArrivesState } from "./arrives-state.ts";
import { type FieldIssue, readEntries } from "./choose-answer.ts";

/** What the worker is asked: the fields, and the chart of the pack that is worn. */
export interface ArrivesQuestion {
  readonly state: ArrivesState;
  readonly chart: charts.SizeChart | undefined;
}

/** One look at the pack: what counts of what was seen, and what it came to. */
export interface LookShown {
  readonly answers: readonly afterwards.GivenAnswer[];
  readonly step: afterwards.BodyCheckStep;
  /** How many of the answers that were given followed from each other; those taken back are among them. */
  readonly used: number;
}

/** What is known of the length, or the girth, that a part goes by. */
export interface LengthShown {
  readonly dimension: charts.ChartDimension;
  readonly length: fit.UncertainLength;
  /** Its 95 % interval. */
  readonly lowerMm: number;
  readonly upperMm: number;
  /** `false` where nothing was read and the middle of what is worn stands for it. */
  readonly isKnown: boolean;
}

/** All that the page shows; absent parts could not be worked out. */
export interface ArrivesAnswer {
  readonly state: ArrivesState;
  readonly issues: readonly FieldIssue[];
  readonly chart: charts.SizeChart | undefined;
  readonly size: string | undefined;
  readonly belt: string | undefined;
  readonly length: LengthShown | undefined;
  readonly girth: LengthShown | undefined;
  /** The looks so far, the current one last; none where the check cannot begin. */
  readonly looks: readonly LookShown[];
  /** Why the check cannot begin. */
  readonly blocked?: "chart" | "length" | "entries";
  /** Whether answers of a link did not follow from each other and were left out. */
  readonly isCut: boolean;
}

const LENGTHS: readonly charts.ChartDimension[] = ["torso-length", "back-waist-length", "stature"];
const GIRTHS: readonly charts.ChartDimension[] = [
  "hip-belt-girth",
  "unstated-hip-girth",
  "hip-girth",
  "waist-girth",
];

/** Leads the check as far as it was answered. */
export function answerArrives({ state, chart }: ArrivesQuestion): ArrivesAnswer {
  const { person, issues: told } = readEntries(state.choose, chart === undefined ? [] : [chart]);
  // The library's own pick, without its reasons: this page only has to know what would have been taken.
  const picked = person === undefined || chart === undefined ? undefined : fit.pickSizes(person, chart);
  const hasReadings = Object.values(state.choose.readings).some((texts) =>
    texts.some((text) => text.trim() !== ""),
  );
  // Without any reading the check goes by what is seen alone, and what would be missing for a choice is no fault.
  const about = (picked?.issues ?? []).map((issue) => ({ field: undefined, issue }));
  const issues = [...told, ...about].filter(
    ({ issue }) => issue.severity === "error" && issue.code !== "person-readings-missing",
  );
  const nothing = {
    state,
    issues,
    chart,
    size: undefined,
    belt: undefined,
    length: undefined,
    girth: undefined,
    looks: [],
    isCut: false,
  };
  if (chart === undefined) return { ...nothing, blocked: "chart" };
  const pick = picked?.ok ? picked.value : undefined;
  const size = nameOf(chart.sizes, state.size) ?? pick?.pick ?? chart.sizes[0]?.name;
  const belt = nameOf(chart.belts, state.belt) ?? pick?.belt ?? chart.belts[0]?.name;
  if (size === undefined) return { ...nothing, blocked: "chart" };
  const held = { ...nothing, size, belt };
  if (hasReadings && issues.some(({ field }) => field !== undefined)) return { ...held, blocked: "entries" };
  const beliefs = pick?.beliefs ?? [];
  const worn = chart.sizes.find(({ name }) => name === size);
  const length = lengthOf(worn, LENGTHS, beliefs);
  const girth = lengthOf(chart.belts.find(({ name }) => name === belt) ?? worn, GIRTHS, beliefs);
  if (length === undefined) return { ...held, girth, blocked: "length" };
  const started = afterwards.startBodyCheck({
    chart,
    size,
    length: length.length,
    ...(belt === undefined ? {} : { belt }),
    ...(girth?.isKnown === true ? { girth: girth.length } : {}),
  });
  if (!started.ok) return { ...held, length, girth, blocked: "chart" };
  return { ...held, length, girth, ...leadLooks(started.value, state) };
}

function nameOf(known: readonly { readonly name: string }[], name: string): string | undefined {
  return known.find((one) => one.name === name)?.name;
}

/** The belief of what a part goes by, or where nothing was read the middle of what is worn, as wide as it. */
function lengthOf(
  worn: { readonly ranges: charts.SizeRanges } | undefined,
  dimensions: readonly charts.ChartDimension[],
  beliefs: readonly fit.DimensionBelief[],
): LengthShown | undefined {
  const dimension = dimensions.find((one) => worn?.ranges[one] !== undefined);
  const range = dimension === undefined ? undefined : worn?.ranges[dimension]?.interval;
  if (dimension === undefined || range === undefined) return undefined;
  const wanted: readonly string[] =
    dimension === "unstated-hip-girth" ? [dimension, "hip-belt-girth", "hip-girth"] : [dimension];
  const belief = beliefs.find((one) => wanted.includes(one.dimension));
  if (belief !== undefined) {
    const { meanMm, sdMm, degreesOfFreedom } = belief;
    return shown(dimension, { meanMm, sdMm, degreesOfFreedom }, true);
  }
  const { from, to } = range;
  if (!(from > 0 && Number.isFinite(to))) return undefined;
  const length = {
    meanMm: from + (to - from) / 2,
    sdMm: to - from,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  };
  return shown(dimension, length, false);
}

function shown(dimension: charts.ChartDimension, length: fit.UncertainLength, isKnown: boolean): LengthShown {
  const { meanMm, sdMm, degreesOfFreedom } = length;
  const reach = sdMm * statistics.studentTQuantile(0.975, degreesOfFreedom);
  return { dimension, length, lowerMm: meanMm - reach, upperMm: meanMm + reach, isKnown };
}

/** Answers that do not follow from those before them, as a link may hold, are left out with all after them. */
function leadLooks(
  started: afterwards.BodyCheckState,
  { seen, again }: ArrivesState,
): Pick<ArrivesAnswer, "looks" | "isCut"> {
  const first = lead(started, seen);
  const one = { answers: first.state.answers, step: first.state.step, used: first.used };
  if (again === undefined || first.state.step.kind !== "adjust") {
    return { looks: [one], isCut: first.isCut || again !== undefined };
  }
  const second = lead(afterwards.lookAgain(first.state), again);
  return {
    looks: [one, { answers: second.state.answers, step: second.state.step, used: second.used }],
    isCut: first.isCut || second.isCut,
  };
}

function lead(
  started: afterwards.BodyCheckState,
  given: readonly afterwards.GivenAnswer[],
): { readonly state: afterwards.BodyCheckState; readonly used: number; readonly isCut: boolean } {
  let state = started;
  for (const [used, { item, answer }] of given.entries()) {
    if (state.step.kind !== "ask" || state.step.item !== item) return { state, used, isCut: true };
    state = afterwards.answerBodyCheck(state, item, answer);
  }
  return { state, used: given.length, isCut: false };
}
