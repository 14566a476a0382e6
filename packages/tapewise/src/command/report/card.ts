import type { SizeChart } from "@tapewise/charts";
import type { Recommendation } from "@tapewise/fit";
import { cleanWord } from "../text/clean.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { chanceToFit } from "./chance.ts";
import { headline } from "./headline.ts";
import { drawPictures } from "./pictures.ts";

/** What is said once at the end and not on every card. */
const SAID_ONCE: ReadonlySet<string> = new Set(["check-on-body", "see-fitter"]);

/** Everything about one pack for one person. */
export function card(
  recommendation: Recommendation,
  chart: SizeChart,
  unit: "cm" | "in",
  rank?: number,
): string[] {
  const number = rank === undefined ? "" : `${rank}. `;
  const next = recommendation.next.filter((step) => !SAID_ONCE.has(step.code));
  const capacity = recommendation.sizes.find((fit) => fit.size === recommendation.pick)?.capacityLitres;
  const unjudged = recommendation.unjudgedSizes;
  return [
    ...wrap(`${number}${cleanWord(recommendation.chart)}`),
    ...aboutChart(chart),
    ...wrap(headline(recommendation), { first: "  ", rest: "  " }),
    ...(recommendation.belt === undefined
      ? []
      : [`  Hip belt: ${recommendation.belt.pick}, with ${chanceToFit(recommendation.belt.probability)}.`]),
    ...(capacity === undefined ? [] : [`  In this size it holds ${capacity} L.`]),
    "",
    ...drawPictures(recommendation, chart, unit),
    "  Why",
    ...bullets(recommendation.reasons.map((reason) => reason.sentence)),
    ...(unjudged.length === 0
      ? []
      : bullets([`Not judged, for the chart does not say enough: ${unjudged.join(", ")}.`])),
    ...(next.length === 0 ? [] : ["  Next", ...bullets(next.map((step) => step.sentence))]),
    "",
  ];
}

function aboutChart({ cut, harness, swappable }: SizeChart): string[] {
  const parts = [
    ...(cut === undefined ? [] : [cut === "women" || cut === "men" ? `${cut}'s cut` : `${cut} cut`]),
    ...(harness === undefined ? [] : [`${harness} harness`]),
    ...(swappable.length === 0 ? [] : [`${swappable.join(" and ").replaceAll("-", " ")} can be swapped`]),
  ];
  return parts.length === 0 ? [] : wrap(`(${parts.join("; ")})`, { first: "  ", rest: "  " });
}
