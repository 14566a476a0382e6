export { duckdbIssues } from "./issues.ts";
export { choicesSql } from "./sql/choices-sql.ts";
export { normalTailSql } from "./sql/normal-tail-sql.ts";
export type { BeliefColumns, PeopleTable } from "./sql/people-table.ts";
export { sizeFitsSql } from "./sql/size-fits-sql.ts";
export { type AnsweredTable, type AnswerTableOptions, answerTable } from "./table/answer-table.ts";
