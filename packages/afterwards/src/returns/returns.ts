import type { ChartDimension } from "@tapewise/charts";
import type { DrawOptions, Measuring } from "@tapewise/coverage";
import type { DimensionId } from "@tapewise/landmarks";
import type { About } from "@tapewise/population";

/** Where the ranges of a chart truly sit. */
export interface ChartOffset {
  /** What is to be added to both ends of every printed range, in mm: above 0 where packs come out longer. */
  readonly mm: number;
  /** Standard uncertainty of it in mm; 0 where it is left out. */
  readonly uncertaintyMm?: number;
}

/** What is asked about returns. */
export interface ReturnsRequest {
  readonly measuring: Measuring;
  /**
   * By the dimension as the chart calls it; one that is not named sits where it is printed. What the chart is not judged
   * by is not used, and the outcome says so.
   */
  readonly offsets: { readonly [D in ChartDimension]?: ChartOffset };
  /** Where people have to be drawn: how many (4,000 where it is left out) and from which seed (1). */
  readonly draw?: DrawOptions;
}

/** What becomes of what people choose: shares of people that add up to 1. */
export interface ReturnShares {
  /** The size fits. */
  readonly kept: number;
  /** It does not, and another size of the chart would: it is exchanged. */
  readonly exchanged: number;
  /** No size of the chart fits: it goes back for good. */
  readonly sentBack: number;
}

/** Returns with a chart as it is printed, and with one that says where its ranges sit. */
export interface ExpectedReturns {
  readonly people: About;
  /** Everybody chooses by what is printed. */
  readonly printed: ReturnShares;
  /**
   * Everybody chooses by ranges that are moved by the offsets: because the offset is known to whoever advises them, or
   * because the chart is printed anew.
   */
  readonly relabelled: ReturnShares;
  /** By how much fewer people exchange with moved ranges: `printed.exchanged` less `relabelled.exchanged`. */
  readonly saved: number;
  readonly judged: readonly {
    readonly dimension: DimensionId;
    /** What the chart calls it, which is something else where it says "hip" and not which. */
    readonly charted: ChartDimension;
    readonly uncertaintyMm: number;
  }[];
  /** `summed`: one dimension, good to 10⁻⁴. `drawn`: several, people drawn at random. */
  readonly method: "summed" | "drawn";
  /** Standard errors from drawing; 0 where it is summed. That of `saved` is of the same people in both cases. */
  readonly standardError: {
    readonly printed: number;
    readonly relabelled: number;
    readonly saved: number;
  };
}
