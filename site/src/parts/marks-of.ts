interface Told {
  readonly issue: { readonly severity: "error" | "warning" };
  readonly line?: number | undefined;
}

/** The lines of a text that something is told of, each with the gravest of it. */
export function marksOf(told: readonly Told[]): ReadonlyMap<number, "error" | "warning"> {
  const marks = new Map<number, "error" | "warning">();
  for (const { issue, line } of told) {
    if (line !== undefined && marks.get(line) !== "error") marks.set(line, issue.severity);
  }
  return marks;
}
