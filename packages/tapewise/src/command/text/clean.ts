import { escaped, printable } from "@tapewise/outcome";

/** Text of other people's making on one line: what would disturb a terminal becomes U+FFFD. */
export const cleanWord: (text: string) => string = printable;

/** The same for whole output, whose line ends are kept. */
export function cleanLines(text: string): string {
  return eachLine(text, printable);
}

/** JSON that is safe to show: the same value, with everything that could disturb a terminal escaped. */
export function cleanJson(value: unknown, indent?: number): string {
  return eachLine(JSON.stringify(value, undefined, indent), escaped);
}

function eachLine(text: string, clean: (line: string) => string): string {
  return text.split("\n").map(clean).join("\n");
}
