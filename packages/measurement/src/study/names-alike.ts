import type { Issue } from "@tapewise/outcome";
import { plainWords } from "./split-header.ts";
import type { StudyReport } from "./study-report.ts";

/** Names of one kind that differ by capitals, spaces or hyphens only: one person may have been written in two ways. */
export function reportNamesAlike(
  names: readonly string[],
  kind: "subjects" | "measurers",
  report: StudyReport,
): readonly Issue[] {
  const seen = new Map<string, string>();
  return names.flatMap((name) => {
    const plain = plainWords(name);
    const other = seen.get(plain);
    if (other === undefined) {
      seen.set(plain, name);
      return [];
    }
    return [report("study-names-alike", { path: [kind], received: name, facts: { other, kind } })];
  });
}
