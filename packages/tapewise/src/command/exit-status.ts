/** What the command answers its caller with. */
export const EXIT = {
  /** There is an answer; it may come with warnings. */
  answer: 0,
  /** The data given have issues of severity `error`; what could be answered was answered. */
  issues: 1,
  /** The command was not called rightly: a verb, an option or the path of a file is wrong. */
  misuse: 2,
  /** A fault of the program itself (EX_SOFTWARE of BSD sysexits). */
  fault: 70,
} as const;

/** One of {@link EXIT}. */
export type ExitStatus = (typeof EXIT)[keyof typeof EXIT];

/** The graver of two: misuse before issues before an answer. */
export function graver(one: ExitStatus, other: ExitStatus): ExitStatus {
  return one > other ? one : other;
}
