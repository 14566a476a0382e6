import type { SizeChart } from "@tapewise/charts";
import { type Recommendation, type RecommendOptions, recommend } from "@tapewise/fit";
import type { Issue } from "@tapewise/outcome";
import { type ReadPersonOptions, safeReadPerson } from "../person/read-person.ts";
import { safeParsePerson } from "../person/safe-parse-person.ts";
import type { BatchLine } from "./choice-line.ts";
import { issueLine } from "./issue-line.ts";
import { sizesByStature } from "./sizes-by-stature.ts";
import { summariseChoice } from "./summarise-choice.ts";

/** How people are answered. */
export interface ChooseOptions extends ReadPersonOptions, Partial<RecommendOptions> {}

/**
 * Answers one person of the batch contract, held against every chart.
 *
 * Whatever the value is, the answer is one object. A person with anything of severity `error` in it, in
 * any reading, gets no choice but all of its issues, so that no doubtful choice passes for a sound
 * one. Warnings come along with the choice, and so does a chart that sizes by nothing that was read,
 * as long as another chart can be judged.
 *
 * Codes: those of {@link safeParsePerson}, {@link safeReadPerson} and `recommend`.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { choosePerson } from "tapewise/batch";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const answer = choosePerson({ id: "p1", readings: { "torso-length": ["45 cm", "45.2 cm"] } }, [chart]);
 * "choices" in answer && answer.choices[0]?.pick; // => "M"
 * ```
 */
export function choosePerson(
  value: unknown,
  charts: readonly SizeChart[],
  options: ChooseOptions = {},
): BatchLine {
  const id = idOf(value);
  const parsed = safeParsePerson(value);
  if (!parsed.ok) return issueLine(id, parsed.issues);
  const read = safeReadPerson(parsed.value, { ...options, estimateStature: charts.some(sizesByStature) });
  const issues: Issue[] = [...parsed.issues, ...read.issues];
  if (!read.ok || issues.some((issue) => issue.severity === "error")) return issueLine(id, issues);

  // A chart that sizes by something that was not read is no fault of the person's, as long as another one answers.
  const unjudged: Issue[] = [];
  const recommendations: Recommendation[] = [];
  for (const chart of charts) {
    const outcome = recommend(read.value, chart, { ...options, unit: options.unit ?? "cm" });
    if (outcome.ok) recommendations.push(outcome.value);
    else unjudged.push(...outcome.issues.map((issue) => ({ ...issue, path: ["readings"] })));
  }
  const doubts = recommendations.flatMap((recommendation) => recommendation.questions);
  const all = withoutRepeats([...issues, ...unjudged, ...doubts]);
  const nothingAnswers = charts.length > 0 && recommendations.length === 0;
  return nothingAnswers ? issueLine(id, all) : summariseChoice(id, read.value, recommendations, all);
}

/** Several charts raise the same doubt about a reading. */
function withoutRepeats(issues: readonly Issue[]): readonly Issue[] {
  const seen = new Set<string>();
  return issues.filter((issue) => {
    const key = JSON.stringify([issue.code, issue.path, issue.message]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** What comes back as the id: only what went in as one. */
function idOf(value: unknown): string | number | null {
  const id =
    typeof value === "object" && value !== null && Object.hasOwn(value, "id")
      ? Reflect.get(value, "id")
      : null;
  return typeof id === "string" || Number.isSafeInteger(id) ? id : null;
}
