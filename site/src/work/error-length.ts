import { type outcome, units } from "tapewise";

/** An error as it is written: it may be nothing at all, and a bias may be below zero. */
export interface ErrorLength {
  readonly mm: number;
  readonly issues: readonly outcome.Issue[];
}

/** Reads the size of an error, such as `6 mm` or, signed, `-4 mm`. Nothing written is no error. */
export function readErrorLength(text: string, isSigned = false): ErrorLength {
  const plain = text.trim();
  if (plain === "" || /^[+\-−]?0+(?:[.,]0+)?\s*(?:mm|cm|m|in)?$/.test(plain)) return { mm: 0, issues: [] };
  const [, sign = "", size = plain] = (isSigned ? /^([+\-−])?\s*(.*)$/.exec(plain) : null) ?? [];
  const read = units.safeParseLength(size);
  if (!read.ok) return { mm: 0, issues: read.issues };
  return { mm: sign === "-" || sign === "−" ? -read.value.mm : read.value.mm, issues: read.issues };
}
