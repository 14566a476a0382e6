/** The publications that figures and findings of this package come from. */
export const sourceIds = [
  "ansur-2",
  "ansur-handbook",
  "kouchi-2020",
  "c7-palpation-2018",
  "c7-prominence-2013",
  "crest-palpation-2017",
  "crest-palpation-2007",
  "scapula-level-2015",
  "self-girths-2013",
  "self-waist-2014",
  "daily-shrinkage-1987",
  "load-numbness-2017",
] as const;

/** One of {@link sourceIds}. */
export type SourceId = (typeof sourceIds)[number];
