export {
  type Catalogue,
  defineIssues,
  fillTemplate,
  type IssueDefinition,
  type Translation,
} from "./catalogue.ts";
export { closestWord } from "./closest-word.ts";
export { createIssue, type IssueDetails, translateIssue } from "./create-issue.ts";
export { describeReceived } from "./describe-received.ts";
export { didYouMean } from "./did-you-mean.ts";
export { editDistance } from "./edit-distance.ts";
export { InvalidArgumentError, IssuesError, TapewiseError } from "./errors.ts";
export { formatIssue, formatPath } from "./format-issue.ts";
export type { Facts, Issue, IssuePath, Place, Received, Severity } from "./issue.ts";
export { type Failure, failure, hasIssues, type Outcome, type Success, success, unwrap } from "./outcome.ts";
export { escaped, printable } from "./printable.ts";
export { relocateIssue } from "./relocate-issue.ts";
