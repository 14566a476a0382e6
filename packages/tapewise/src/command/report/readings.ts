import { speakDimension } from "@tapewise/charts";
import type { Person } from "@tapewise/fit";
import { type BudgetLine, type Estimate, stateEstimate } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { table } from "../text/table.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { issueBullets } from "./issue-bullets.ts";
import { capitalised } from "./words.ts";

export interface ReadingsReport {
  readonly unit: "cm" | "in";
  readonly budget: boolean;
}

/** What the readings say, what was assumed, and what there is to ask about them. */
export function reportReadings(person: Person, issues: readonly Issue[], options: ReadingsReport): string[] {
  const statements = person.estimates.map((estimate) => `${stateEstimate(estimate, options)}.`);
  return [
    "Readings",
    ...bullets(statements.map(capitalised)),
    ...assumptions(person.estimates),
    ...(person.prior === undefined
      ? []
      : bullets([`Weighed with ${person.prior.label} (${person.prior.source}). ${person.prior.caveat}`])),
    ...(options.budget ? person.estimates.flatMap(budget) : []),
    ...(issues.length === 0 ? [] : ["", "Questions about the readings", ...issueBullets(issues)]),
    "",
  ];
}

const ASSUMED: Readonly<Record<Estimate["conditions"]["assumed"][number], (estimate: Estimate) => string>> = {
  tool: ({ conditions }) => `read with a ${conditions.tool.replaceAll("-", " ")} (--tool)`,
  "measured-by": ({ conditions }) =>
    `${conditions.measuredBy === "self" ? "read by yourself" : "read by a helper"} (--measured-by)`,
  "landmarks-found-afresh": ({ conditions }) =>
    `bones ${conditions.landmarksFoundAfresh ? "" : "not "}found afresh before each reading (--afresh)`,
};

function assumptions([first]: readonly Estimate[]): string[] {
  if (first === undefined || first.conditions.assumed.length === 0) return [];
  const said = first.conditions.assumed.map((part) => ASSUMED[part](first));
  return wrap(`Assumed: ${said.join("; ")}.`, { first: "  - ", rest: "    " });
}

/** The error budget: where the uncertainty of one estimate comes from (GUM clause 8). */
function budget(estimate: Estimate): string[] {
  const rows = estimate.budget.map((line) => [
    line.source.replaceAll("-", " "),
    line.type,
    line.uncertaintyMm.toFixed(2),
    degrees(line),
    `${(line.share * 100).toFixed(0)} %`,
    line.averagesOut ? "yes" : "no",
    line.basis.replaceAll("-", " "),
  ]);
  const header = ["source", "type", "u (mm)", "df", "share", "averages out", "basis"];
  return [
    "",
    `  Error budget of the ${speakDimension(estimate.dimension)}`,
    ...table(header, rows, ["left", "left", "right", "right", "right", "left", "left"]),
  ];
}

function degrees({ degreesOfFreedom }: BudgetLine): string {
  return Number.isFinite(degreesOfFreedom) ? degreesOfFreedom.toFixed(0) : "inf";
}
