import {
  type AveragingResult,
  drawReadings,
  type LessonError,
  lessonSlip,
  type RunningPoint,
  resampleAveraging,
  runningMean,
  type SizeBounds,
  simulateAveraging,
} from "@tapewise/measurement";
import type { LengthReading } from "@tapewise/units";
import type { Command } from "commander";
import { type ErrorOptions, readingError } from "../reading-error.ts";

/** What a lesson is about. */
export interface AverageOptions extends ErrorOptions {
  readonly bias: number;
  readonly slips?: boolean;
  readonly readings: number;
  readonly runs: number;
  readonly seed: number;
}

/** A lesson, to be told in words or as data. Lengths in mm. */
export interface AverageLesson {
  readonly options: Pick<AverageOptions, "dimension" | "readings" | "runs" | "seed" | "bias">;
  readonly source: "drawn" | "own";
  /** The length that results are held against. */
  readonly lengthMm: number;
  /** Whether it was stated; otherwise it is the mean of the class. */
  readonly isStated: boolean;
  readonly error?: LessonError;
  readonly basis?: "assumption" | "stated";
  readonly series: readonly RunningPoint[];
  readonly slipsMm: readonly number[];
  readonly results: readonly AveragingResult[];
  readonly chart?: string;
}

/** The sizes to pick from, and whose they are. */
export interface Picking {
  readonly sizes?: readonly SizeBounds[] | undefined;
  readonly chart?: string | undefined;
}

/** A lesson with readings drawn for a person of a stated length. */
export function drawnLesson(
  options: AverageOptions,
  { sizes, chart }: Picking,
  command: Command,
): AverageLesson {
  const { dimension, readings: count, runs, seed, bias, slips } = options;
  const lengthMm =
    options.length ?? command.error('error: no true length is given; say for example --length "43.6 cm"');
  const known = readingError(options, lengthMm, command);
  const error: LessonError = {
    ...known.lesson,
    biasMm: bias,
    ...(slips === true ? { slip: lessonSlip } : {}),
  };
  const { readingsMm, slipsMm } = drawReadings({ lengthMm, error, count, seed });
  return {
    options: { dimension, readings: count, runs, seed, bias },
    source: "drawn",
    lengthMm,
    isStated: true,
    error,
    basis: known.basis,
    series: runningMean(readingsMm),
    slipsMm,
    results: simulateAveraging({ lengthMm, error, counts: countsUpTo(count), runs, seed, ...picked(sizes) }),
    ...(chart === undefined ? {} : { chart }),
  };
}

/** A lesson with a class's own readings of one person. */
export function ownLesson(
  readings: readonly LengthReading[],
  options: AverageOptions,
  { sizes, chart }: Picking,
  command: Command,
): AverageLesson {
  const {
    dimension,
    readings: count,
    runs,
    seed,
    bias,
    slips,
    perReading,
    lasting,
    tool,
    measuredBy,
    afresh,
    ruleLength,
  } = options;
  const idle = {
    bias: bias === 0 ? undefined : bias,
    slips,
    perReading,
    lasting,
    tool,
    measuredBy,
    afresh,
    ruleLength,
  };
  const [first] = Object.entries(idle).filter(([, value]) => value !== undefined);
  if (first !== undefined) {
    const name = first[0].replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    command.error(`error: --${name} says how readings are drawn, but these are your own`);
  }
  if (readings.length < 2) command.error("error: a lesson needs two readings or more");
  const readingsMm = readings.map(({ mm }) => mm);
  const lengthMm = options.length ?? readingsMm.reduce((sum, mm) => sum + mm, 0) / readingsMm.length;
  return {
    options: { dimension, readings: count, runs, seed, bias },
    source: "own",
    lengthMm,
    isStated: options.length !== undefined,
    series: runningMean(readingsMm),
    slipsMm: [],
    results: resampleAveraging({
      readingsMm,
      lengthMm,
      counts: countsUpTo(count),
      runs,
      seed,
      ...picked(sizes),
    }),
    ...(chart === undefined ? {} : { chart }),
  };
}

function picked(sizes: readonly SizeBounds[] | undefined): { readonly sizes?: readonly SizeBounds[] } {
  return sizes === undefined ? {} : { sizes };
}

/** 1, 2, 3, 5, 7, 10, … and the last. */
function countsUpTo(most: number): readonly number[] {
  return [...new Set([1, 2, 3, 5, 7, 10, 20, 50].filter((count) => count < most).concat(most))];
}
