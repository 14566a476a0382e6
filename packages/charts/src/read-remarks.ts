import { placeOf } from "@tapewise/tables";
import { type AboutKey, aboutKeys, readAbout } from "./about-chart.ts";
import { chartIssue } from "./chart-issue.ts";
import type { ChartDefaults } from "./chart-options.ts";
import type { Remark } from "./csv-tables.ts";
import { type Reading, shortText } from "./parts.ts";
import { hintFor } from "./suggest-word.ts";

const STATEMENT = /^#+\s*(\p{L}+)\s*:(.*)$/u;

/**
 * Reads what the `# name: value` lines of a CSV file say about the chart. A line without a single word
 * before a colon is a comment. Trailing separators, which spreadsheets add, are no part of a value.
 */
export function readRemarks(
  remarks: readonly Remark[],
  issues: Reading["issues"],
  file: string | undefined,
): ChartDefaults {
  const texts = new Map<AboutKey, { readonly text: string; readonly line: number }>();
  for (const remark of remarks) {
    const [, word = "", value = ""] = STATEMENT.exec(remark.text.slice(0, 1000)) ?? [];
    if (word === "") continue;
    const key = aboutKeys.find((candidate) => candidate === word.toLowerCase());
    const place = placeOf(remark.line, 1, file);
    const text = value.replace(/[\s,;]+$/, "");
    if (key === undefined) {
      const facts = {
        what: "a chart",
        key: word,
        hint: hintFor(word, aboutKeys),
        known: aboutKeys.join(", "),
      };
      issues.push(chartIssue("chart-key-unknown", { path: [word], place, received: text, facts }));
    } else if (texts.has(key)) {
      issues.push(chartIssue("chart-key-repeated", { path: [key], place, received: text, facts: { key } }));
    } else {
      const short = shortText(text, word, { path: [key], issues }, place);
      if (short !== undefined) texts.set(key, { text: short, line: remark.line });
    }
  }
  const text = (key: AboutKey): string | undefined => texts.get(key)?.text;
  const parts = text("swappable");
  const about = {
    chart: text("chart"),
    maker: text("maker"),
    product: text("product"),
    cut: text("cut"),
    harness: text("harness"),
    swappable: parts === undefined ? undefined : partsOf(parts),
  };
  return readAbout(about, issues, (key) => {
    const line = texts.get(key)?.line;
    return line === undefined ? undefined : placeOf(line, 1, file);
  });
}

/** "none" says that nothing can be swapped, which is more than saying nothing. */
function partsOf(text: string): readonly string[] {
  return /^none$/i.test(text) ? [] : text.split(/[,;\s]+/);
}
