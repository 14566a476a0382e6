import type { ChartDimension, Cut, HarnessKind, SwappablePart } from "./size-chart.ts";

/** The ends of a range, or a nominal length, each as text with its unit, such as `"38 cm"`. */
export interface RangeEndsData {
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly nominal?: string | undefined;
}

/** A range as the JSON form of a chart states it; `also` is the same range in another unit. */
export interface RangeData extends RangeEndsData {
  readonly also?: string | RangeEndsData | undefined;
}

/** What a size states of each dimension: text as in a cell (`"38-43 cm"`) or an object. */
export type RangesData = Readonly<Partial<Record<ChartDimension, string | RangeData | undefined>>>;

/** A size in the JSON form. `covers` is needed only where the name does not say it. */
export type SizeData = RangesData & {
  readonly size: string;
  readonly covers?: readonly string[] | undefined;
  readonly capacityLitres?: number | undefined;
  readonly massGrams?: number | undefined;
  readonly harness?: HarnessKind | undefined;
};

/** A hip belt in the JSON form. */
export type BeltData = RangesData & { readonly belt: string };

/** The JSON form of a chart. */
export interface ChartData {
  readonly chart: string;
  readonly maker?: string | undefined;
  readonly product?: string | undefined;
  readonly cut?: Cut | undefined;
  readonly harness?: HarnessKind | undefined;
  readonly swappable?: readonly SwappablePart[] | undefined;
  readonly sizes: readonly SizeData[];
  readonly belts?: readonly BeltData[] | undefined;
}
