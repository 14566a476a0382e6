import { measurement, type outcome, units } from "tapewise";
import type { AverageState } from "./average-state.ts";
import { MOST_CLASS_READINGS } from "./average-state.ts";
import { readErrorLength } from "./error-length.ts";

/** A size to pick from, by its name; open ends are infinite. */
export interface NamedSize {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** What the worker is asked. */
export interface AverageQuestion {
  readonly state: AverageState;
  /** Sizes for the dimension of the lesson, none where the chart has none. */
  readonly sizes: readonly NamedSize[];
}

/** What is wrong with a field, in the library's words or as a code of the page's own. */
export interface AverageIssue {
  readonly field: string;
  readonly issue?: outcome.Issue;
  readonly code?: "chance" | "few" | "many" | "far";
  /** Line of the class's readings, from 1. */
  readonly line?: number;
}

/** The mean, or the median, of so many readings. */
export interface SpreadShown {
  readonly biasMm: number;
  readonly sdMm: number;
  readonly rmseMm: number;
  readonly lowMm: number;
  readonly highMm: number;
  readonly wrongShare: number | undefined;
}

/** What so many readings are worth. */
export interface CountShown {
  readonly count: number;
  readonly mean: SpreadShown;
  readonly median: SpreadShown;
  readonly bars: readonly measurement.HistogramBar[];
  /** Without drawing any; only for drawn readings. */
  readonly expected: measurement.ExpectedError | undefined;
}

/** The class's readings, or those that were drawn, and where their mean goes. */
export interface LessonSeries {
  readonly count: number;
  /** The last of them, newest last. */
  readonly latestMm: readonly number[];
  readonly slips: number;
  /** The points of the path, thinned where there are many. */
  readonly points: readonly measurement.RunningPoint[];
  readonly last: measurement.RunningPoint;
}

/** All that the page shows; absent parts could not be worked out. */
export interface AverageAnswer {
  readonly state: AverageState;
  readonly sizes: readonly NamedSize[];
  readonly issues: readonly AverageIssue[];
  /** What it is held against: the true length; for a class a careful reading, or the mean of all. */
  readonly lengthMm: number | undefined;
  readonly isLengthKnown: boolean;
  readonly error: measurement.LessonError | undefined;
  /** What every reading of this series is off by; nobody can know it of a class. */
  readonly offsetMm: number | undefined;
  readonly series: LessonSeries | undefined;
  readonly counts: readonly CountShown[];
}

/** Numbers of readings that are compared. */
const COUNTS: readonly number[] = [1, 3, 5, 10];
/** Series for each: a share is then known to a per cent or so. */
const RUNS = 4000;
const MOST_POINTS = 160;
const LATEST = 60;
/** Longer or shorter is nobody's back or hips, and rounding to it says nothing. */
const LEAST_MM = 50;
const MOST_MM = 3000;

/** Takes the readings, follows their mean, and repeats the lesson many times over. */
export function answerAverage(question: AverageQuestion): AverageAnswer {
  const { state, sizes } = question;
  return state.source === "class" ? answerClass(state, sizes) : answerDrawn(state, sizes);
}

function answerDrawn(state: AverageState, sizes: readonly NamedSize[]): AverageAnswer {
  const issues: AverageIssue[] = [];
  const lengthMm = readLength("length", state.length, issues);
  const error = lengthMm === undefined ? undefined : errorOf(state, lengthMm, issues);
  if (lengthMm === undefined || error === undefined || issues.length > 0) {
    return nothing(state, sizes, issues);
  }
  const drawn = measurement.drawReadings({ lengthMm, error, count: state.taken, seed: state.seed });
  const results = measurement.simulateAveraging({
    lengthMm,
    error,
    counts: COUNTS,
    runs: RUNS,
    seed: state.seed,
    ...(sizes.length === 0 ? {} : { sizes }),
  });
  return {
    state,
    sizes,
    issues,
    lengthMm,
    isLengthKnown: true,
    error,
    offsetMm: drawn.offsetMm,
    series: seriesOf(drawn.readingsMm, drawn.slipsMm.filter((slip) => slip !== 0).length),
    counts: countsOf(results, error),
  };
}

function answerClass(state: AverageState, sizes: readonly NamedSize[]): AverageAnswer {
  const issues: AverageIssue[] = [];
  const { lines, texts } = splitReadings(state.readings);
  const readings: number[] = [];
  if (texts.length > MOST_CLASS_READINGS) issues.push({ field: "readings", code: "many" });
  for (const [index, text] of texts.slice(0, MOST_CLASS_READINGS).entries()) {
    const read = units.safeParseLength(text);
    if (read.ok && read.value.mm >= LEAST_MM && read.value.mm <= MOST_MM) readings.push(read.value.mm);
    else if (read.ok) issues.push({ field: "readings", code: "far", line: lines[index] ?? 0 });
    for (const issue of read.issues) issues.push({ field: "readings", issue, line: lines[index] ?? 0 });
  }
  const heldMm = state.held.trim() === "" ? undefined : readLength("held", state.held, issues);
  if (readings.length < 2) {
    return nothing(state, sizes, [...issues, { field: "readings", code: "few" }]);
  }
  const results = measurement.resampleAveraging({
    readingsMm: readings,
    ...(heldMm === undefined ? {} : { lengthMm: heldMm }),
    counts: COUNTS,
    runs: RUNS,
    seed: state.seed,
    ...(sizes.length === 0 ? {} : { sizes }),
  });
  const series = seriesOf(readings, 0);
  return {
    state,
    sizes,
    issues,
    lengthMm: heldMm ?? series.last.meanMm,
    isLengthKnown: heldMm !== undefined,
    error: undefined,
    offsetMm: undefined,
    series,
    counts: countsOf(results, undefined),
  };
}

function nothing(
  state: AverageState,
  sizes: readonly NamedSize[],
  issues: readonly AverageIssue[],
): AverageAnswer {
  return {
    state,
    sizes,
    issues,
    lengthMm: undefined,
    isLengthKnown: false,
    error: undefined,
    offsetMm: undefined,
    series: undefined,
    counts: [],
  };
}

function readLength(field: "length" | "held", text: string, issues: AverageIssue[]): number | undefined {
  const read = units.safeParseLength(text);
  for (const issue of read.issues) issues.push({ field, issue });
  if (!read.ok) return undefined;
  if (read.value.mm >= LEAST_MM && read.value.mm <= MOST_MM) return read.value.mm;
  issues.push({ field, code: "far" });
  return undefined;
}

function errorOf(
  state: AverageState,
  lengthMm: number,
  issues: AverageIssue[],
): measurement.LessonError | undefined {
  const length = (field: "bias" | "lasting" | "noise" | "step" | "slipSize", isSigned = false) => {
    const read = readErrorLength(state[field], isSigned);
    issues.push(...read.issues.map((issue) => ({ field, issue })));
    if (Math.abs(read.mm) > MOST_MM) {
      issues.push({ field, code: "far" });
      return 0;
    }
    return read.mm;
  };
  const stepMm = length("step");
  const slip = slipOf(state, length, issues);
  if (state.hands === "own") {
    const error = {
      biasMm: length("bias", true),
      lastingMm: length("lasting"),
      noiseMm: length("noise"),
      stepMm,
    };
    return { ...error, ...(slip === undefined ? {} : { slip }) };
  }
  if (issues.length > 0) return undefined;
  return measurement.lessonErrorFromDefaults(
    {
      dimension: state.dimension,
      lengthMm,
      stepMm,
      conditions: { tool: state.tool, measuredBy: state.hands },
    },
    slip,
  );
}

function slipOf(
  state: AverageState,
  length: (field: "slipSize") => number,
  issues: AverageIssue[],
): measurement.LandmarkSlip | undefined {
  if (state.slips === "none") return undefined;
  if (state.slips === "some") {
    const { chance, sizeMm, direction } = measurement.lessonSlip;
    return { chance, sizeMm, direction };
  }
  const percent = /^\s*(\d{1,3}(?:[.,]\d{1,3})?)\s*%?\s*$/.exec(state.slipChance)?.[1]?.replace(",", ".");
  const chance = Number(percent ?? Number.NaN) / 100;
  const sizeMm = length("slipSize");
  if (chance >= 0 && chance <= 1) return { chance, sizeMm, direction: state.slipSide };
  issues.push({ field: "slipChance", code: "chance" });
  return undefined;
}

function seriesOf(readingsMm: readonly number[], slips: number): LessonSeries {
  const running = measurement.runningMean(readingsMm);
  const last = running.at(-1);
  if (last === undefined) throw new RangeError("no reading");
  return {
    count: readingsMm.length,
    latestMm: readingsMm.slice(-LATEST),
    slips,
    points: thin(running),
    last,
  };
}

/** Points as they stand on a logarithmic axis: all of the first ones, few of the thousandth. */
function thin(points: readonly measurement.RunningPoint[]): readonly measurement.RunningPoint[] {
  if (points.length <= MOST_POINTS) return points;
  const kept = new Set<number>();
  for (let i = 0; i < MOST_POINTS; i += 1) {
    kept.add(Math.round(points.length ** (i / (MOST_POINTS - 1))) - 1);
  }
  return points.filter((_, index) => kept.has(index));
}

function countsOf(
  results: readonly measurement.AveragingResult[],
  error: measurement.LessonError | undefined,
): readonly CountShown[] {
  const spread = results.flatMap(({ mean }) => [mean.valuesMm[0] ?? 0, mean.valuesMm.at(-1) ?? 0]);
  const width = barWidth(Math.max(...spread) - Math.min(...spread), error?.stepMm ?? 0);
  return results.map(({ count, mean, median }) => ({
    count,
    mean: shown(mean),
    median: shown(median),
    bars: measurement.histogramOf(mean.valuesMm, width),
    expected: error === undefined ? undefined : measurement.expectedMeanError(error, count),
  }));
}

function shown({ biasMm, sdMm, rmseMm, quantilesMm, wrongShare }: measurement.AverageSpread): SpreadShown {
  return { biasMm, sdMm, rmseMm, lowMm: quantilesMm[0], highMm: quantilesMm[4], wrongShare };
}

/** Some forty bars over everything, as wide as a step of the tape at least, or single readings leave holes. */
function barWidth(rangeMm: number, stepMm: number): number {
  const wanted = Math.max(rangeMm / 45, stepMm, 0.25);
  const nice = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100].find((size) => size >= wanted) ?? wanted;
  return stepMm > 0 ? Math.ceil(nice / stepMm) * stepMm : nice;
}

/** Readings one a line, or parted by semicolons or tabs, with the line that each stands in. */
function splitReadings(text: string): {
  readonly texts: readonly string[];
  readonly lines: readonly number[];
} {
  const texts: string[] = [];
  const lines: number[] = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    for (const part of line.split(/[;\t]+/)) {
      if (part.trim() === "") continue;
      texts.push(part.trim());
      lines.push(index + 1);
    }
  }
  return { texts, lines };
}
