import type { Outcome } from "@tapewise/outcome";
import type { OutcomeRow } from "./outcome-row.ts";

/** One line of a log as it was read: a row, or what is wrong with it, and where it stands. */
export interface LoggedOutcome {
  /** Counts from 1. */
  readonly line: number;
  readonly outcome: Outcome<OutcomeRow>;
}

/** What was taken out of a log. */
export interface Forgotten {
  /** How many rows of the person were removed. */
  readonly rows: number;
  /** How many lines that cannot be read as rows, and name the person, were removed with them. */
  readonly unreadable: number;
}

/** Where outcomes are kept: a file, a database, memory. Whoever keeps them elsewhere writes these three. */
export interface OutcomeStore {
  /**
   * Adds a row at the end. Resolves when the row will be read back: to the row as it was kept, or to issues where
   * nothing was kept.
   */
  append(row: OutcomeRow): Promise<Outcome<OutcomeRow>>;
  /** Every row in the order in which it was added. */
  read(): AsyncIterable<LoggedOutcome>;
  /**
   * Removes every row of a person. What is read afterwards is what would be read if the rows had never been added,
   * but for the numbers of the lines.
   */
  forget(person: string): Promise<Outcome<Forgotten>>;
}
