import type { Worst } from "./measure.ts";
import points from "./points.json" with { type: "json" };

const brief = (value: number): string => (value === 0 ? "0" : value.toExponential(1));
const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
const HEADERS = ["function", "working domain", "points", "worst relative error", "worst, in ulp", "where"];

function tableOf(rows: readonly Worst[]): string {
  return [
    line(HEADERS),
    line(HEADERS.map(() => "---")),
    ...rows.map(({ name, domain, kind, points: count, worst, at }) =>
      line([
        `\`${name}\``,
        domain,
        String(count),
        kind === "relative" ? brief(worst.relative) : `${brief(worst.absolute)} absolute`,
        kind === "relative" ? worst.ulp.toFixed(1) : "–",
        at,
      ]),
    ),
  ].join("\n");
}

const INTRO = `How far each numeric kernel is from the truth, at its worst. The truth has 25 digits of 50 and more that were worked
with (${points.origin}); arguments are doubles, taken exactly; the difference is taken with decimal.js in 50 digits. An ulp
is the distance between the reference's double and the next one, so that half an ulp is the best there is.

Points: the edges of each function (ends of the domain, places where its algorithm changes, zeros, tails) and random ones,
uniform or log-uniform over the domain, seeded. The script beside this page's data, \`points.py\`, holds them all. Shares below
10⁻³⁰ are beyond the working domain and stand apart. Bivariate and trivariate shares are good to an absolute error.

\`npm run check:accuracy\` measures anew and prints the table; with \`-- --write\` it writes it.`;

/** The page as Markdown, without a title. */
function bodyOf(worst: readonly Worst[], mark: string): string {
  const near = worst.filter(({ part }) => part === "working domain");
  const far = worst.filter(({ part }) => part === "far tail");
  return [
    INTRO,
    "## On the working domain",
    `${mark}${tableOf(near)}`,
    "## Beyond it: shares below 10⁻³⁰",
    "The logarithm of such a share is a large number, and its own rounding is a relative error of the share.",
    `${mark}${tableOf(far)}`,
  ].join("\n\n");
}

export function accuracyReport(worst: readonly Worst[]): string {
  return `# Accuracy of the numeric kernels\n\n${bodyOf(worst, "")}\n`;
}

export function accuracyPage(worst: readonly Worst[]): string {
  return `---
title: Accuracy
description: The worst error of each numeric kernel against fifty-digit arithmetic, and where it is.
sidebar:
  order: 8
---

${bodyOf(worst, "<!-- from: reference-checks/accuracy/ACCURACY.md -->\n\n")}
`;
}
