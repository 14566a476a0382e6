import { describeReceived, receivedText } from "./describe-received.ts";
import type { Issue } from "./issue.ts";

/** Every error that Tapewise throws on purpose is one of these. */
export class TapewiseError extends Error {
  override readonly name: string = "TapewiseError";
}

/** A caller passed an argument that no user data could excuse: a programmer's mistake. */
export class InvalidArgumentError extends TapewiseError {
  override readonly name = "InvalidArgumentError";
  readonly argument: string;
  readonly expected: string;

  constructor(argument: string, received: unknown, expected: string) {
    super(`${argument} must be ${expected}, but received ${receivedText(describeReceived(received))}`);
    this.argument = argument;
    this.expected = expected;
  }
}

/** What `parseX` throws where `safeParseX` returns a failure: it carries the same issues. */
export class IssuesError extends TapewiseError {
  override readonly name = "IssuesError";
  readonly issues: readonly Issue[];

  constructor(issues: readonly Issue[]) {
    super(issues.map((issue) => issue.message).join("; "));
    this.issues = issues;
  }
}
