/** The reasons to be careful, or to let somebody qualified decide. */
export const cautionCodes = [
  "ask-first",
  "neck-movement",
  "pain-or-numbness",
  "injury-or-surgery",
  "pregnancy",
  "growing-child",
  "heavy-load",
] as const;

/** One of {@link cautionCodes}. */
export type CautionCode = (typeof cautionCodes)[number];
