import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { SurveyOptions } from "@tapewise/coverage";
import {
  type JointModel,
  mixtureJoint,
  type ReferenceCut,
  type ReferenceVariable,
  referenceMixture,
  referencePopulation,
  referenceTable,
  withLognormal,
} from "@tapewise/population";
import { Option } from "commander";

/** Whose survey figures to use. */
export type PeopleCut = ReferenceCut | "both";

/** People whom charts are held against. */
export interface SurveyedPeople {
  readonly cut: PeopleCut;
  readonly population: JointModel;
  readonly survey: SurveyOptions;
  /** The girths that are lognormal in the model; the other dimensions are normal. */
  readonly lognormal: readonly ReferenceVariable[];
}

/** Whom to ask about. */
export function peopleOption(): Option {
  return new Option(
    "--cut <cut>",
    "whose survey figures; both are half women, half men (default: the cut of the charts where all have one, else both)",
  ).choices(["women", "men", "both"]);
}

/**
 * The reference survey's people of a cut; half women and half men is an assumption, and the output says so.
 * Girths that are judged are lognormal, which comes nearer to the people counted than a normal curve.
 */
export function surveyedPeople(
  stated: PeopleCut | undefined,
  charts: readonly SizeChart[],
  dimensions: readonly ChartDimension[] = statedBy(charts),
): SurveyedPeople {
  const cut = stated ?? cutOf(charts);
  const lognormal = GIRTHS.filter(
    (girth) =>
      dimensions.includes(girth) || (girth === "hip-girth" && dimensions.includes("unstated-hip-girth")),
  );
  const of = (one: ReferenceCut): JointModel => {
    const normal = referencePopulation(one);
    return lognormal.length === 0 ? normal : withLognormal(normal, lognormal);
  };
  if (cut !== "both") return { cut, population: of(cut), survey: { people: countOf(cut) }, lognormal };
  const population = mixtureJoint({
    about: referenceMixture({ women: 1, men: 1 }).about,
    parts: [
      { weight: 1, model: of("women") },
      { weight: 1, model: of("men") },
    ],
  });
  return { cut, population, survey: { people: [countOf("women"), countOf("men")] }, lognormal };
}

const GIRTHS: readonly (ReferenceVariable & ChartDimension)[] = ["hip-girth", "waist-girth", "chest-girth"];

function statedBy(charts: readonly SizeChart[]): readonly ChartDimension[] {
  return charts.flatMap(({ sizes, belts }) =>
    [...sizes, ...belts].flatMap(({ ranges }) => Object.keys(ranges) as ChartDimension[]),
  );
}

function cutOf(charts: readonly SizeChart[]): PeopleCut {
  const cuts = new Set(charts.map((chart) => chart.cut));
  const [only] = cuts;
  return cuts.size === 1 && (only === "women" || only === "men") ? only : "both";
}

function countOf(cut: ReferenceCut): number {
  return referenceTable(cut)[0]?.people ?? 0;
}
