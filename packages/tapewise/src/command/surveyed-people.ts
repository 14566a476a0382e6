import type { SizeChart } from "@tapewise/charts";
import type { SurveyOptions } from "@tapewise/coverage";
import {
  type JointModel,
  type ReferenceCut,
  referenceMixture,
  referencePopulation,
  referenceTable,
} from "@tapewise/population";
import { Option } from "commander";

/** Whose survey figures to use. */
export type PeopleCut = ReferenceCut | "both";

/** People whom charts are held against. */
export interface SurveyedPeople {
  readonly cut: PeopleCut;
  readonly population: JointModel;
  readonly survey: SurveyOptions;
}

/** Whom to ask about. */
export function peopleOption(): Option {
  return new Option(
    "--cut <cut>",
    "whose survey figures; both are half women, half men (default: the cut of the charts where all have one, else both)",
  ).choices(["women", "men", "both"]);
}

/** The reference survey's people of a cut; half women and half men is an assumption, and the output says so. */
export function surveyedPeople(stated: PeopleCut | undefined, charts: readonly SizeChart[]): SurveyedPeople {
  const cut = stated ?? cutOf(charts);
  if (cut !== "both") {
    return { cut, population: referencePopulation(cut), survey: { people: countOf(cut) } };
  }
  const population = referenceMixture({ women: 1, men: 1 });
  return { cut, population, survey: { people: [countOf("women"), countOf("men")] } };
}

function cutOf(charts: readonly SizeChart[]): PeopleCut {
  const cuts = new Set(charts.map((chart) => chart.cut));
  const [only] = cuts;
  return cuts.size === 1 && (only === "women" || only === "men") ? only : "both";
}

function countOf(cut: ReferenceCut): number {
  return referenceTable(cut)[0]?.people ?? 0;
}
