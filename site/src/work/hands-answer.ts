import { measurement, type outcome } from "tapewise";
import type { HandsState } from "./hands-state.ts";

/** What the worker is asked: everything but how lengths are shown. */
export type HandsQuestion = Pick<HandsState, "text" | "dimension" | "bare">;

/** An issue of the reading or of the report, and where in the text it is. */
export interface HandsTold {
  readonly issue: outcome.Issue;
  readonly line: number | undefined;
  readonly column: number | undefined;
}

/** One cell of what was read. */
export interface HandsCell {
  readonly mm: number | undefined;
  /** Why it takes no part. */
  readonly state: "read" | "missing" | "set-aside";
  readonly text: string | undefined;
}

/** One subject's row of what was read: a cell for each measurer and repeat. */
export interface HandsRow {
  readonly subject: string;
  readonly meanMm: number | undefined;
  readonly cells: readonly HandsCell[];
}

/** A study as it was read, and all that it tells. */
export interface HandsAnswer {
  readonly text: string;
  /** What was wrong with the text, and what the report could not tell. */
  readonly told: readonly HandsTold[];
  readonly wrong: number;
  readonly odd: number;
  readonly measurers: readonly string[];
  readonly repeats: number;
  /** The first subjects, in the order of the text. */
  readonly rows: readonly HandsRow[];
  readonly setAside: readonly measurement.SetAsideReading[];
  readonly report: measurement.StudyReport | undefined;
  /** Too many hands or readings to compare in a page. */
  readonly isTooMany: boolean;
  readonly json: string | undefined;
}

export const MOST_TOLD = 100;
export const MOST_ROWS = 60;
const MOST_ASIDE = 60;
const MOST_PAIRS = 12;
/** More hands make more pairs than anybody looks at, and more readings keep a page waiting. */
export const MOST_MEASURERS = 30;
export const MOST_READINGS = 25_000;

/** Reads a study and tells what it says. */
export function answerHands({ text, dimension, bare }: HandsQuestion): HandsAnswer {
  const nothing: HandsAnswer = {
    text,
    told: [],
    wrong: 0,
    odd: 0,
    measurers: [],
    repeats: 0,
    rows: [],
    setAside: [],
    report: undefined,
    isTooMany: false,
    json: undefined,
  };
  if (text.trim() === "") return nothing;
  const read = measurement.safeParseStudy(text, {
    dimension: dimension === "" ? undefined : dimension,
    unit: bare === "" ? undefined : bare,
  });
  if (!read.ok) return { ...nothing, ...toldOf(read.issues) };
  const study = read.value;
  const isTooMany = study.measurers.length > MOST_MEASURERS || study.readings.length > MOST_READINGS;
  const report = isTooMany ? undefined : measurement.summariseStudy(study);
  return {
    ...nothing,
    ...toldOf([...read.issues, ...(report?.issues ?? [])]),
    measurers: study.measurers,
    repeats: study.repeats,
    rows: rowsOf(study),
    setAside: study.setAside.slice(0, MOST_ASIDE),
    report: report === undefined ? undefined : cut(report),
    isTooMany,
    json: report === undefined ? undefined : `${JSON.stringify({ study, report }, undefined, 2)}\n`,
  };
}

/** Only what a page shows goes between threads: of many pairs those that agree least. */
function cut(report: measurement.StudyReport): measurement.StudyReport {
  const widest = [...report.agreement].sort((a, b) => reachOf(b) - reachOf(a)).slice(0, MOST_PAIRS);
  return {
    ...report,
    agreement: widest.map((pair) => ({ ...pair, points: pair.points.slice(0, 400) })),
    ...(report.technicalError === undefined ? {} : { technicalError: unnamed(report.technicalError) }),
    ...(report.precision === undefined ? {} : { precision: { ...report.precision, perSubject: [] } }),
    issues: [],
  };
}

/** Whom each error rests on is in the download; a page of figures does not name them. */
function unnamed(error: measurement.TechnicalError): measurement.TechnicalError {
  const bare = (tem: measurement.Tem): measurement.Tem => ({ ...tem, subjects: [] });
  const { intra, inter, total } = error;
  return {
    ...error,
    perMeasurer: error.perMeasurer.map(({ measurer, tem }) => ({ measurer, tem: bare(tem) })),
    ...(intra === undefined ? {} : { intra: bare(intra) }),
    ...(inter === undefined ? {} : { inter: bare(inter) }),
    ...(total === undefined ? {} : { total: bare(total) }),
  };
}

function reachOf({ limits }: measurement.MeasurerAgreement): number {
  return Math.max(Math.abs(limits.lowerLimit.value), Math.abs(limits.upperLimit.value));
}

function toldOf(issues: readonly outcome.Issue[]): Pick<HandsAnswer, "told" | "wrong" | "odd"> {
  const wrong = issues.filter(({ severity }) => severity === "error");
  const odd = issues.filter(({ severity }) => severity === "warning");
  return {
    told: [...wrong, ...odd]
      .slice(0, MOST_TOLD)
      .map((issue) => ({ issue, line: issue.place?.line, column: issue.place?.column })),
    wrong: wrong.length,
    odd: odd.length,
  };
}

function rowsOf(study: measurement.Study): readonly HandsRow[] {
  const subjects = study.subjects.slice(0, MOST_ROWS);
  const measurers = study.measurers.slice(0, MOST_MEASURERS);
  const repeats = Math.min(study.repeats, 10);
  const rows = new Map(subjects.map((subject) => [subject, new Map<string, HandsCell>()]));
  const key = (measurer: string, repeat: number) => `${repeat} ${measurer}`;
  for (const { subject, measurer, repeat, text } of study.missing) {
    rows.get(subject)?.set(key(measurer, repeat), { mm: undefined, state: "missing", text });
  }
  for (const { subject, measurer, repeat, text, mm } of study.setAside) {
    rows.get(subject)?.set(key(measurer, repeat), { mm, state: "set-aside", text });
  }
  // A reading comes last: a second entry of its cell was set aside, and does not hide it.
  for (const { subject, measurer, repeat, text, mm } of study.readings) {
    rows.get(subject)?.set(key(measurer, repeat), { mm, state: "read", text });
  }
  return [...rows].map(([subject, cells]) => {
    const all = measurers.flatMap((measurer) =>
      Array.from(
        { length: repeats },
        (_, index): HandsCell =>
          cells.get(key(measurer, index + 1)) ?? { mm: undefined, state: "missing", text: undefined },
      ),
    );
    const read = all.flatMap(({ mm, state }) => (state === "read" && mm !== undefined ? [mm] : []));
    const meanMm = read.length === 0 ? undefined : read.reduce((sum, mm) => sum + mm, 0) / read.length;
    return { subject, meanMm, cells: all };
  });
}
