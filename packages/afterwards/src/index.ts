export { answerBodyCheck } from "./body-check/answer-body-check.ts";
export {
  type AdjustmentCode,
  adjustmentCodes,
  type BodyCheckAnswer,
  type BodyCheckItem,
  type BodyCheckItemId,
  bodyCheckItemIds,
  type CheckedPart,
} from "./body-check/body-check-item.ts";
export type {
  BodyCheckSetup,
  BodyCheckState,
  BodyCheckStep,
  Contradiction,
  FitterReason,
  GivenAnswer,
  SeenSize,
} from "./body-check/body-check-state.ts";
export { bodyCheckItems } from "./body-check/data.ts";
export { fillBodyCheck, type WrittenChoice, type WrittenStep } from "./body-check/fill-body-check.ts";
export { lookAgain } from "./body-check/look-again.ts";
export { startBodyCheck } from "./body-check/start-body-check.ts";
export { type AnswerText, type BodyCheckTexts, bodyCheckTexts } from "./body-check/texts.ts";
export { type WriteBodyCheckOptions, writeBodyCheck } from "./body-check/write-body-check.ts";
export { type ChangedPicks, changedPicks } from "./evidence/changed-picks.ts";
export {
  type ChartCorrection,
  type CorrectedChart,
  type CorrectedRange,
  correctChart,
} from "./evidence/correct-chart.ts";
export { createEvidence, type Evidence, type ProductTable } from "./evidence/create-evidence.ts";
export { evidenceDefaults } from "./evidence/data.ts";
export type { EvidenceModel, EvidenceScale } from "./evidence/evidence-model.ts";
export { type ExpectedMove, expectedMove } from "./evidence/expected-move.ts";
export { learnMaker } from "./evidence/learn-maker.ts";
export { learnProduct } from "./evidence/learn-product.ts";
export type { Learned, LearnedChart } from "./evidence/learned.ts";
export { lengthAfter } from "./evidence/length-after.ts";
export { priorAfter } from "./evidence/prior-after.ts";
export {
  type EvidencedChoice,
  type EvidenceOptions,
  recommendWithEvidence,
} from "./evidence/recommend-with-evidence.ts";
export { safeSeeOutcome } from "./evidence/see-outcome.ts";
export type { ProductKey, SeenOutcome, Side } from "./evidence/seen-outcome.ts";
export { widenByDoubt } from "./evidence/widen-by-doubt.ts";
export { withChartDoubt } from "./evidence/with-chart-doubt.ts";
export { afterwardsIssues } from "./issues.ts";
export { lendPacks } from "./lending/lend-packs.ts";
export type {
  Lending,
  LendingGoal,
  LendingPack,
  LendingPolicy,
  LendingTable,
  Lent,
  NextPack,
  Without,
} from "./lending/lending.ts";
export { type LendingMember, lendingTable, type ShelfSize } from "./lending/lending-table.ts";
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
export { partDimensions } from "./part-dimensions.ts";
export { expectedReturns } from "./returns/expected-returns.ts";
export type { ChartOffset, ExpectedReturns, ReturnShares, ReturnsRequest } from "./returns/returns.ts";
