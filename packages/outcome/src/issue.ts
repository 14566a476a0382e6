/** Where an issue sits inside the data: property names and zero-based positions, outermost first. */
export type IssuePath = readonly (string | number)[];

/**
 * How much an issue matters.
 *
 * - `error`: the thing named by the path could not be read or used.
 * - `warning`: it was read, but it may not mean what its author meant.
 */
export type Severity = "error" | "warning";

/** A place in a text file. Line and column count from 1; the column counts characters. */
export interface Place {
  readonly file?: string;
  readonly line: number;
  readonly column: number;
}

/** A value as an issue shows it: safe to print as JSON and never long. */
export type Received = string | number | boolean | null;

/** The facts that fill a message. Lengths among them are in millimetres and say so in their name. */
export type Facts = Readonly<Record<string, string | number>>;

/**
 * One thing that is wrong, or doubtful, in data that a user gave.
 *
 * `code` is stable and documented. `message` and `expected` are rendered from the code and the
 * facts in English; {@link translateIssue} renders them anew in another language.
 */
export interface Issue {
  readonly code: string;
  readonly severity: Severity;
  readonly path: IssuePath;
  readonly message: string;
  readonly received: Received;
  readonly expected: string;
  readonly facts: Facts;
  readonly place?: Place;
}
