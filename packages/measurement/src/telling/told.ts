/** The unit that results are told in. */
export type ToldUnit = "cm" | "in";

/** A table of words and numbers; every row is as long as the header. */
export interface ToldTable {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** How many columns from the left hold words; the others hold numbers. */
  readonly wordColumns: number;
}

/** One part of what a study tells. */
export interface ToldSection {
  readonly id:
    | "technical-error"
    | "precision"
    | "correlation"
    | "agreement"
    | "detectable-change"
    | "trend"
    | "digits"
    | "allowance";
  readonly title: string;
  readonly tables: readonly ToldTable[];
  /** How the figures were made, and what holds for them. */
  readonly notes: readonly string[];
  /** One plain sentence: what it means for whoever fits packs. */
  readonly meaning: string;
}

/** Something to do after a study. Codes stay; sentences may be worded better. */
export interface StudyAdvice {
  readonly code:
    | "look-at-outlying"
    | "practise-together"
    | "average-over-measurers"
    | "practise-landmarks"
    | "average-repeats"
    | "stop-the-trend"
    | "read-every-mark"
    | "ask-more-subjects"
    | "ask-more-measurers"
    | "read-again"
    | "keep-going";
  readonly sentence: string;
}
