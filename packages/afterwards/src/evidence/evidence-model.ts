/** What is assumed of outcomes and of makers for one kind of dimension. All lengths in mm. */
export interface EvidenceScale {
  /** How far, as a standard deviation, what a person puts up with differs from the true ends of a range. */
  readonly toleranceMm: number;
  /** Standard deviation of the offsets of makers about 0. */
  readonly makerOffsetSdMm: number;
  /** Standard deviation of the offsets of one maker's products about that of the maker. */
  readonly productOffsetSdMm: number;
  /** Standard deviation of the natural logarithm of the makers' width factors about 0. */
  readonly makerLogWidthSd: number;
  /** The same of one maker's products about that of the maker. */
  readonly productLogWidthSd: number;
  /** Offsets are looked for from minus this to this. */
  readonly reachMm: number;
  /** Logarithms of width factors are looked for from minus this to this. */
  readonly logReach: number;
}

/** The figures behind what is learned from outcomes. */
export interface EvidenceModel {
  readonly backLength: EvidenceScale;
  readonly girth: EvidenceScale;
  readonly stature: EvidenceScale;
  /** The chance that what is reported says nothing of the body: a slip of the pen, the wrong pack, a whim. */
  readonly slipProbability: number;
  /** The chance that a maker's charts are as printed, before any outcome. */
  readonly asPrintedProbability: number;
  /** From this probability on that a maker's charts are not as printed, its ranges are moved. */
  readonly sureProbability: number;
}
