// Words that people write over the columns of a reliability study: common practice, no source. The limits of
// size are assumptions; they keep reading quick and are far beyond any study by hand.

/** A text longer than this is no study. */
export const LONGEST_STUDY_TEXT = 10_000_000;

/** The largest repeat number. */
export const MOST_REPEATS = 1000;

/** The largest number of cells of the grid subjects × measurers × repeats. */
export const MOST_CELLS = 1_000_000;

/** What says that there is no reading, beside an empty cell. */
export const MISSING_MARKS: readonly string[] = ["-", "–", "NA", "N/A", "."];

/** Who measured, where the data do not say so. */
export const LONE_MEASURER = "the measurer";

/** What a column of the long layout holds. */
export type ColumnRole = "subject" | "measurer" | "repeat" | "value" | "unit";

/** The words for the columns of the long layout, in lower case. */
export const COLUMN_WORDS: Readonly<Record<ColumnRole, readonly string[]>> = {
  subject: [
    "subject",
    "subject id",
    "subjects",
    "id",
    "person",
    "participant",
    "volunteer",
    "member",
    "child",
    "patient",
    "name",
    "person id",
    "participant id",
    "who",
    "part",
    "target",
    "specimen",
    "item",
    "nr",
    "no",
    "number",
  ],
  measurer: [
    "measurer",
    "observer",
    "rater",
    "operator",
    "examiner",
    "appraiser",
    "judge",
    "anthropometrist",
    "technician",
    "measured by",
    "taken by",
    "read by",
    "by",
    "helper",
    "inspector",
    "laboratory",
    "lab",
    "hand",
    "measurer id",
  ],
  repeat: [
    "repeat",
    "replicate",
    "repetition",
    "trial",
    "rep",
    "round",
    "attempt",
    "occasion",
    "pass",
    "order",
    "run",
    "repeat number",
    "reading number",
    "reading no",
    "trial number",
    "measurement number",
    "repeat no",
  ],
  value: [
    "value",
    "reading",
    "result",
    "measurement",
    "measure",
    "measured",
    "length",
    "size",
    "mm",
    "cm",
    "m",
    "in",
    "inches",
  ],
  unit: ["unit", "units", "unit of length"],
};

/** Words that with a number name a measurer: `Observer 2`. */
export const MEASURER_WORDS: readonly string[] = [
  "measurer",
  "observer",
  "rater",
  "operator",
  "examiner",
  "appraiser",
  "judge",
  "technician",
  "helper",
  "laboratory",
  "lab",
];

/** Words that with a number name a repeat: `Reading 2`. */
export const REPEAT_WORDS: readonly string[] = [
  "repeat",
  "replicate",
  "repetition",
  "reading",
  "trial",
  "measurement",
  "measure",
  "rep",
  "round",
  "attempt",
  "run",
  "value",
];
