import type { SizeChart } from "@tapewise/charts";
import { dimensionName } from "@tapewise/landmarks";
import {
  averagingTable,
  type ChoicePlan,
  chanceOfRightSize,
  compareNextWays,
  planReadings,
  planReadingsForChoice,
  type SizeBounds,
} from "@tapewise/measurement";
import type { Command } from "commander";
import { type ErrorOptions, type KnownError, readingError } from "../reading-error.ts";
import { type PeopleCut, type SurveyedPeople, surveyedPeople } from "../surveyed-people.ts";

/** What is wanted, and how it is measured. */
export interface PlanOptions extends ErrorOptions {
  readonly uncertainty?: number;
  readonly within?: number;
  readonly probability: number;
  readonly chart?: readonly string[];
  readonly chance?: number;
  readonly cut?: PeopleCut;
}

/** What a chart asks for. */
export interface PlannedChart {
  readonly chart: string;
  readonly plan: ChoicePlan;
  /** The chance with each number of readings of the table. */
  readonly chances: readonly number[];
}

/** A plan, to be told in words or as data. */
export interface ReadingsPlan extends KnownError {
  readonly options: Pick<PlanOptions, "dimension" | "uncertainty" | "within" | "probability" | "chance">;
  readonly lengthMm: number;
  readonly rows: ReturnType<typeof averagingTable>;
  readonly uncertainty?: ReturnType<typeof planReadings>;
  readonly within?: ReturnType<typeof planReadings>;
  readonly charts: readonly PlannedChart[];
  readonly people: SurveyedPeople;
  /** Readings under other conditions that would reach what was asked for; only where these do not. */
  readonly instead: readonly { readonly helper: boolean; readonly afresh: boolean; readonly count: number }[];
  readonly ways?: ReturnType<typeof compareNextWays>;
}

const COUNTS = [1, 2, 3, 4, 5, 7, 10, 20] as const;
/** After so many readings, so many more. Assumption. */
const TAKEN = 3;

/** How many readings, what they bring, and what else would. */
export function makePlan(options: PlanOptions, charts: readonly SizeChart[], command: Command): ReadingsPlan {
  const { dimension, uncertainty, within, probability, chance, step: stepMm } = options;
  const people = surveyedPeople(options.cut, charts);
  const known = beliefOf(people, dimension);
  if (chance !== undefined && known === undefined) {
    command.error(`error: the survey has no ${dimensionName(dimension)}, so that no chance can be told`);
  }
  const lengthMm =
    options.length ??
    known?.meanMm ??
    command.error(`error: say about how long the ${dimensionName(dimension)} is: --length "80 cm"`);
  const error = readingError(options, lengthMm, command);
  const planFor = (one: KnownError["error"]) => ({
    ...(uncertainty === undefined ? {} : { uncertainty: planReadings(one, { standardMm: uncertainty }) }),
    ...(within === undefined ? {} : { within: planReadings(one, { expandedMm: within, probability }) }),
  });
  const rows = averagingTable(error.error, COUNTS);
  const planned =
    chance === undefined || known === undefined
      ? []
      : charts.map((chart): PlannedChart => {
          const sizes = boundsOf(chart, dimension);
          return {
            chart: chart.chart,
            plan: planReadingsForChoice({ error: error.error, sizes, belief: known, wantedChance: chance }),
            chances: rows.map(({ uncertaintyMm }) => chanceOfRightSize(sizes, known, uncertaintyMm)),
          };
        });
  const own = planFor(error.error);
  const isShort = [own.uncertainty, own.within].some((each) => each?.isReachable === false);
  const instead = !isShort
    ? []
    : otherHands(options).flatMap(({ helper, afresh }) => {
        const other = planFor(
          readingError({ ...options, measuredBy: helper ? "helper" : "self", afresh }, lengthMm, command)
            .error,
        );
        const counts = [other.uncertainty, other.within].flatMap((each) =>
          each === undefined ? [] : [each.isReachable ? each.count : Number.POSITIVE_INFINITY],
        );
        const count = Math.max(...counts);
        return count <= MOST_SENSIBLE ? [{ helper, afresh, count }] : [];
      });
  return {
    ...error,
    options: { dimension, probability, ...given({ uncertainty, within, chance }) },
    lengthMm,
    rows,
    ...own,
    charts: planned,
    people,
    instead: instead.toSorted((one, another) => one.count - another.count),
    ...(error.conditions === undefined
      ? {}
      : {
          ways: compareNextWays(
            { dimension, lengthMm, count: TAKEN, stepMm, conditions: error.conditions },
            TAKEN,
          ),
        }),
  };
}

/** More readings than this are no advice. Assumption. */
const MOST_SENSIBLE = 20;

function otherHands({ perReading, measuredBy, afresh = false }: PlanOptions): readonly {
  readonly helper: boolean;
  readonly afresh: boolean;
}[] {
  // Nobody knows what an error of one's own would become.
  if (perReading !== undefined) return [];
  const isHelper = measuredBy === "helper";
  return [
    { helper: isHelper, afresh: true },
    { helper: true, afresh },
    { helper: true, afresh: true },
  ].filter(
    (each, k, all) =>
      (each.helper !== isHelper || each.afresh !== afresh) &&
      all.findIndex(({ helper, afresh: anew }) => helper === each.helper && anew === each.afresh) === k,
  );
}

/** The sizes of a chart in one dimension; those that state a single point or nothing are left out. */
export function boundsOf({ sizes }: SizeChart, dimension: PlanOptions["dimension"]): readonly SizeBounds[] {
  return sizes.flatMap(({ ranges }) => {
    const interval = ranges[dimension]?.interval;
    return interval === undefined || !(interval.from < interval.to) ? [] : [interval];
  });
}

function beliefOf(
  { population }: SurveyedPeople,
  dimension: PlanOptions["dimension"],
): { readonly meanMm: number; readonly sdMm: number } | undefined {
  const variables: readonly string[] = population.variables;
  const place = variables.indexOf(dimension);
  const meanMm = population.mean[place];
  const variance = population.covariance[place]?.[place];
  return meanMm === undefined || variance === undefined ? undefined : { meanMm, sdMm: Math.sqrt(variance) };
}

function given<T extends object>(values: T): { [key in keyof T]: Exclude<T[key], undefined> } {
  const present = Object.entries(values).filter(([, value]) => value !== undefined);
  return Object.fromEntries(present) as { [key in keyof T]: Exclude<T[key], undefined> };
}
