import type { SizeChart } from "@tapewise/charts";
import { nextStepTexts } from "@tapewise/fit";
import type { Answer } from "../../person/answer-person.ts";
import { wrap } from "../text/wrap.ts";
import { card } from "./card.ts";
import { LEGEND } from "./pictures.ts";
import { ranking } from "./ranking.ts";
import { reportReadings } from "./readings.ts";

/** How much of an answer is told. */
export interface ReportOptions {
  /** Whether to show where the uncertainty comes from. */
  readonly budget?: boolean;
  /** Only the best so many packs get a card; left out, all do. */
  readonly mostCards?: number;
}

/** The whole answer to one person, as lines. */
export function reportAnswer(
  answer: Answer,
  charts: readonly SizeChart[],
  { budget = false, mostCards = Number.POSITIVE_INFINITY }: ReportOptions = {},
): string[] {
  const { person, packs, issues, unit } = answer;
  const cards = packs.slice(0, mostCards).flatMap(({ rank, recommendation, index }) => {
    const chart = charts[index];
    return chart === undefined ? [] : card(recommendation, chart, unit, packs.length > 1 ? rank : undefined);
  });
  return [
    ...reportReadings(person, issues, { unit, budget }),
    ...(packs.length < 2 ? [] : ranking(packs)),
    ...cards,
    ...(cards.length === 0 ? [] : closing()),
  ];
}

/** What goes for every pack. */
function closing(): string[] {
  return [
    ...wrap(LEGEND),
    "",
    ...wrap(nextStepTexts["check-on-body"]),
    ...wrap(`Caution. ${nextStepTexts["see-fitter"]}`),
  ];
}
