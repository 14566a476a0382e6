import { choiceIssues } from "./choice-issues.ts";
import { columnIssues } from "./columns/column-issues.ts";

/** What keeps a choice from being made (errors), and doubts about what was read (warnings). */
export const fitIssues: typeof choiceIssues & typeof columnIssues = { ...choiceIssues, ...columnIssues };
