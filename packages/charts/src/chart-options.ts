import type { Millimetres } from "@tapewise/units";
import type { Cut, HarnessKind, SwappablePart } from "./size-chart.ts";

/** What the caller knows of a chart that its text does not say. What the text says counts before it. */
export interface ChartDefaults {
  readonly chart?: string;
  readonly maker?: string;
  readonly product?: string;
  readonly cut?: Cut;
  readonly harness?: HarnessKind;
  readonly swappable?: readonly SwappablePart[];
}

/** How a chart is read. */
export interface ChartOptions extends ChartDefaults {
  /** The file's name, for the places of issues. */
  readonly file?: string;
  /**
   * What a nominal length without neighbours stands for: this much to either side. Left out, such a
   * size is left without a range, because nothing in the chart says how far it reaches.
   */
  readonly loneNominalHalfWidth?: Millimetres;
}

/** The two forms in which charts are kept. */
export type ChartFormat = "json" | "csv";

/** How a chart is read whose form may be found out. */
export interface ParseChartOptions extends ChartOptions {
  /** Left out, text that begins with `{` or `[` is JSON and any other is CSV. */
  readonly format?: ChartFormat;
}
