export { afterwardsIssues } from "./issues.ts";
export { memoryOutcomeStore } from "./log/memory-outcome-store.ts";
export { OUTCOME_MOMENT } from "./log/moment.ts";
export {
  type ExchangeReason,
  exchangeReasons,
  OUTCOME_VERSION,
  type OutcomeEstimate,
  type OutcomeKind,
  type OutcomeProduct,
  type OutcomeRow,
  outcomeKinds,
} from "./log/outcome-row.ts";
export type { Forgotten, LoggedOutcome, OutcomeStore } from "./log/outcome-store.ts";
export { type ReadOutcomes, readOutcomes } from "./log/read-outcomes.ts";
export { safeOutcomeRow } from "./log/safe-outcome-row.ts";
export { safeParseOutcomeLine } from "./log/safe-parse-outcome-line.ts";
export { LONGEST_NAME } from "./log/wanted.ts";
export { writeOutcomeLine } from "./log/write-outcome-line.ts";
