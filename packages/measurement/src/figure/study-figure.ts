import type { IntervalEstimate } from "../reliability/interval-estimate.ts";
import type { ToldTable, ToldUnit } from "../telling/told.ts";

/** The words of a figure; a picture shows all of them. */
export interface StudyFigureText {
  readonly title: string;
  /** What is to be seen, for people who do not see it. */
  readonly description: string;
  readonly unit: ToldUnit;
  /** How many were measured, by whom. */
  readonly sample: string;
  readonly caveat: string;
}

/** All readings, a row for each subject, the shortest first. Lengths in mm. */
export interface ReadingsFigure {
  readonly kind: "readings";
  readonly text: StudyFigureText;
  readonly table: ToldTable;
  readonly measurers: readonly string[];
  readonly rows: readonly {
    readonly subject: string;
    /** `measurer` is a position in `measurers`. */
    readonly readings: readonly { readonly measurer: number; readonly mm: number }[];
  }[];
}

/** Differences of two measurers over their means, with limits of agreement. Lengths in mm. */
export interface AgreementFigure {
  readonly kind: "agreement";
  readonly text: StudyFigureText;
  readonly table: ToldTable;
  readonly points: readonly { readonly mean: number; readonly difference: number }[];
  /** Lower limit, mean difference, upper limit. */
  readonly lines: readonly [IntervalEstimate, IntervalEstimate, IntervalEstimate];
}

/** Where the error of a single reading comes from. */
export interface ErrorFigure {
  readonly kind: "errors";
  readonly text: StudyFigureText;
  readonly table: ToldTable;
  readonly bars: readonly { readonly label: string; readonly sdMm: number; readonly share: number }[];
}

/** A picture of a study, as data. */
export type StudyFigure = ReadingsFigure | AgreementFigure | ErrorFigure;
