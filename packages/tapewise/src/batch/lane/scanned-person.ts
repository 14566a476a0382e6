import { dimensionIds } from "@tapewise/landmarks";

/** As many readings of one dimension are read quickly; more of them are rare. */
export const MOST_READINGS = 8;

/** One usual line of the batch contract, in numbers: filled anew for every line, so that nothing is allocated. */
export interface ScannedPerson {
  bytes: Uint8Array;
  /** Where the scanner stands, and where the line ends. */
  at: number;
  end: number;
  /** The id as it stands in the line, with its quotation marks; -1 where there is none. */
  idFrom: number;
  idTo: number;
  /** 0 none, 1 women, 2 men. */
  cut: number;
  /** 0 where it is not stated. */
  statureMm: number;
  /** Where its text stands, without quotation marks. */
  statureFrom: number;
  statureTo: number;
  /** 0 self, 1 helper. */
  by: number;
  /** 0 tape, 1 cord and ruler. */
  tool: number;
  /** Whether the bones were found afresh: 0 not said, 1 no, 2 yes. */
  afresh: number;
  hasBuild: boolean;
  /** A bit for each dimension that was read. */
  read: number;
  /** For each dimension: how many readings, and the finest step in mm. */
  readonly counts: Uint8Array;
  readonly steps: Float64Array;
  /** For each dimension, {@link MOST_READINGS} places for readings in mm. */
  readonly lengths: Float64Array;
  /** For each reading: where its text stands, without quotation marks. */
  readonly textFrom: Int32Array;
  readonly textTo: Int32Array;
  /** The length that was read last, the step of its writing, and 1 for metric units or 2 for inches. */
  lengthMm: number;
  stepMm: number;
  system: number;
}

/** A person to be scanned into. */
export function createScannedPerson(): ScannedPerson {
  const count = dimensionIds.length;
  return {
    bytes: new Uint8Array(0),
    at: 0,
    end: 0,
    idFrom: -1,
    idTo: -1,
    cut: 0,
    statureMm: 0,
    statureFrom: 0,
    statureTo: 0,
    by: 0,
    tool: 0,
    afresh: 0,
    hasBuild: false,
    read: 0,
    counts: new Uint8Array(count),
    steps: new Float64Array(count),
    lengths: new Float64Array(count * MOST_READINGS),
    textFrom: new Int32Array(count * MOST_READINGS),
    textTo: new Int32Array(count * MOST_READINGS),
    lengthMm: 0,
    stepMm: 0,
    system: 0,
  };
}
