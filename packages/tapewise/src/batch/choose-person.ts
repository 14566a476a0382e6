import type { SizeChart } from "@tapewise/charts";
import type { RecommendOptions } from "@tapewise/fit";
import { answerPerson } from "../person/answer-person.ts";
import type { PriorChoice } from "../person/choose-prior.ts";
import { idOf } from "../person/id-of.ts";
import type { BatchLine } from "./choice-line.ts";
import { issueLine } from "./issue-line.ts";
import { summariseChoice } from "./summarise-choice.ts";

/** How people are answered. */
export interface ChooseOptions extends Partial<RecommendOptions> {
  readonly prior?: PriorChoice;
}

/**
 * Answers one person of the batch contract, held against every chart.
 *
 * Whatever the value is, the answer is one object. A person with anything of severity `error` in it, in
 * any reading, gets no choice but all of its issues, so that no doubtful choice passes for a sound
 * one. Warnings come along with the choice. A chart that sizes by nothing that was read is a warning as
 * long as another chart can be judged, and an error where none can.
 *
 * Codes: those of {@link safeParsePerson}, {@link safeReadPerson} and `compare`.
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
  const outcome = answerPerson(value, charts, { ...options, unit: options.unit ?? "cm" });
  const { issues } = outcome.ok ? outcome.value : outcome;
  if (!outcome.ok || issues.some((issue) => issue.severity === "error")) return issueLine(id, issues);
  const { packs, person } = outcome.value;
  const inOrder = packs.toSorted((a, b) => a.index - b.index);
  return summariseChoice(
    id,
    person,
    inOrder.map(({ recommendation }) => recommendation),
    issues,
  );
}
