import { formatPath, type Issue } from "@tapewise/outcome";
import { bullets } from "../text/wrap.ts";
import { issueSentence } from "./issue-sentence.ts";

/** How issues are set. */
export interface IssueBulletOptions {
  readonly margin?: string;
  /** Whether the file of each place has been named already. */
  readonly oneFile?: boolean;
}

/** Issues as sentences for people, each with the code to look it up by. */
export function issueBullets(
  issues: readonly Issue[],
  { margin = "  ", oneFile = false }: IssueBulletOptions = {},
): string[] {
  return bullets(
    issues.map((issue) => `${whereOf(issue, oneFile)}${issueSentence(issue)}`),
    margin,
  );
}

/** The place in a file, or else the path in the data, with a colon; a mere question goes without. */
function whereOf({ place, path, severity }: Issue, oneFile: boolean): string {
  if (place === undefined) return severity === "warning" || path.length === 0 ? "" : `${formatPath(path)}: `;
  const { file, line, column } = place;
  return file === undefined || oneFile ? `line ${line}, column ${column}: ` : `${file}:${line}:${column}: `;
}
