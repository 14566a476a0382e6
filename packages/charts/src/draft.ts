import type { Issue, IssuePath, Place } from "@tapewise/outcome";
import type { ChartDefaults } from "./chart-options.ts";
import type { ChartDimension, HarnessKind } from "./size-chart.ts";
import type { Statement } from "./statement.ts";

/** What a size states of one dimension, before nominal lengths are given their intervals. */
export interface DraftRange {
  /** The first one counts; the others are checked against it. */
  readonly statements: readonly [Statement, ...Statement[]];
  readonly place?: Place;
}

/** A size, or a hip belt, as it was read. */
export interface DraftSize {
  readonly name: string;
  /** Where the name does not say which sizes it covers. */
  readonly covers?: readonly string[];
  readonly ranges: ReadonlyMap<ChartDimension, DraftRange>;
  readonly capacityLitres?: number;
  readonly massGrams?: number;
  readonly harness?: HarnessKind;
  readonly path: IssuePath;
  readonly place?: Place;
}

/** A chart as it was read from either form, with what was wrong on the way. */
export interface DraftChart {
  readonly about: ChartDefaults;
  readonly sizes: readonly DraftSize[];
  readonly belts: readonly DraftSize[];
  readonly issues: readonly Issue[];
  /** Where the chart begins, for issues about it as a whole. */
  readonly place?: Place | undefined;
}
