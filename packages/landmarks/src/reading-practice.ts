/** One habit of whoever takes readings, whatever the dimension. */
export interface ReadingHabit {
  readonly code: string;
  readonly text: string;
  /** What it guards against. */
  readonly why: string;
}

/** The habits that make readings worth having. Common practice, no source. */
export const readingPractice: readonly ReadingHabit[] = [
  {
    code: "check-the-tape",
    text: "Lay the tape along a steel rule before you begin: zero at zero, and half a metre at half a metre.",
    why: "A stretched or torn tape is wrong by the same amount every time, and no repeat shows it.",
  },
  {
    code: "mark-the-bones",
    text: "Find all the bones first, mark them, and measure between the marks.",
    why: "Nobody can feel for a bone, hold a tape and read a number at once.",
  },
  {
    code: "eye-above-the-mark",
    text: "Read with the eye straight above the mark.",
    why: "A slanting look adds or takes away a line or two.",
  },
  {
    code: "write-at-once",
    text: "Write each reading down with its unit before you take the next, and cover it.",
    why: "A number in the head draws the next one towards it, and a number without a unit may mean two lengths.",
  },
  {
    code: "start-afresh",
    text: "For each repeat wipe off the marks, take the tape away and find the bones again.",
    why: "Repeats on the same mark agree nicely and say nothing about whether the mark was right.",
  },
  {
    code: "keep-them-all",
    text: "Keep every reading, the odd one too; note beside it what went wrong if you know it.",
    why: "An odd reading may be the only right one.",
  },
  {
    code: "three-or-more",
    text: "Take three readings; more are fine, above all when you measure alone.",
    why: "One reading hides its error; two disagree without saying who is right.",
  },
];
