import type { Issue } from "@tapewise/outcome";

/** What is wrong, what was expected, and the code to look it up by; a question keeps its mark and gets no full stop. */
export function issueSentence({ message, expected, code }: Issue): string {
  return `${message}${message.endsWith("?") ? "" : "."} Expected: ${expected}. [${code}]`;
}
