import { type ChartDimension, type SizeChart, speakDimension } from "@tapewise/charts";
import { choiceErrors, pickStretches } from "@tapewise/coverage";
import { createIssue, InvalidArgumentError, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import { afterwardsIssues } from "../issues.ts";
import { drawReturns } from "./draw-returns.ts";
import { boxesOf, chartedAs } from "./fitting.ts";
import { pickByRule } from "./pick-by-rule.ts";
import type { ExpectedReturns, ReturnShares, ReturnsRequest } from "./returns.ts";
import { normalNodes, sumReturns } from "./sum-returns.ts";

/** How many people are drawn where nothing else is asked for. */
const PEOPLE = 4000;

/**
 * How many people will exchange a pack, and how many fewer if the chart said where its ranges truly sit.
 *
 * People measure themselves as well as people do ({@link choiceErrors} says how well, and which dimensions count), and
 * take the size that `recommend` gives by the estimates alone. A size fits when the body lies in the printed range
 * moved by the true offset. Where one dimension counts, true lengths are summed over and the error of the estimate is
 * taken in closed form; where several do, people are drawn. An offset that is itself uncertain is averaged over, as a
 * normal variable that is the same for every size.
 *
 * As in `chartCoverage`, a size that does not state the dimension by which the chart goes first fits nobody: adding
 * one that states nothing changes no share.
 *
 * It is taken that everybody whom a size does not fit notices and exchanges it, and that nobody else does: the share
 * is one of sizes that do not fit, and an upper bound of exchanges about fit.
 *
 * Issue codes as of {@link choiceErrors}; as a warning `returns-offset-not-judged`, for an offset that is not used.
 *
 * @throws {@link InvalidArgumentError} for an offset that is not finite or an uncertainty below 0, and as
 * {@link choiceErrors} does.
 *
 * @example
 * ```ts
 * import { expectedReturns } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * import { referencePopulation } from "@tapewise/population";
 * const chart = parseChart("size,torso-length (cm)\nS,35-40\nM,40-45\nL,45-50\n", { chart: "Doily 45" });
 * const outcome = expectedReturns(chart, referencePopulation("women"), {
 *   measuring: { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 },
 *   offsets: { "torso-length": { mm: 15 } },
 * });
 * const percent = (share: number) => `${Math.round(share * 100)} %`;
 * outcome.ok && percent(outcome.value.printed.exchanged); // => "26 %"
 * outcome.ok && outcome.value.relabelled.exchanged < outcome.value.printed.exchanged / 2; // => true
 * ```
 */
export function expectedReturns(
  chart: SizeChart,
  population: JointModel,
  request: ReturnsRequest,
): Outcome<ExpectedReturns> {
  const { measuring, draw = {} } = request;
  const { people = PEOPLE, seed = 1 } = draw;
  for (const [dimension, { mm, uncertaintyMm = 0 }] of Object.entries(request.offsets)) {
    if (!Number.isFinite(mm)) {
      throw new InvalidArgumentError(`offsets["${dimension}"].mm`, mm, "a finite offset");
    }
    if (!(Number.isFinite(uncertaintyMm) && uncertaintyMm >= 0)) {
      const argument = `offsets["${dimension}"].uncertaintyMm`;
      throw new InvalidArgumentError(argument, uncertaintyMm, "a finite length, 0 or more");
    }
  }
  const errors = choiceErrors(chart, population, measuring, { people, seed });
  if (!errors.ok) return errors;
  const { method } = errors.value;
  const judged = errors.value.judged.map((one) => ({ ...one, charted: chartedAs(chart, one.dimension) }));
  // A girth that the chart calls "hip" may be named as it is read, too.
  const named = judged.map(({ charted, dimension }) =>
    request.offsets[charted] === undefined ? dimension : charted,
  );
  const offsets = named.map((name) => {
    const { mm = 0, uncertaintyMm = 0 } = request.offsets[name] ?? {};
    return { mm, uncertaintyMm };
  });
  const boxes = boxesOf(chart, judged);
  const pickAt = (estimatesMm: readonly number[]): number => pickByRule(chart, judged, estimatesMm);
  const [only, offset] = [judged[0], offsets[0]];
  const shares =
    method === "summed" && only !== undefined && offset !== undefined
      ? summed(population.distribution(only.dimension), only.uncertaintyMm, offset)
      : drawReturns({ population, judged, boxes, pickAt, offsets, people, seed });
  return success(
    {
      people: population.about,
      ...shares,
      saved: shares.printed.exchanged - shares.relabelled.exchanged,
      judged,
      method,
    },
    [...errors.issues, ...unusedOffsets(request, chart, named)],
  );

  function summed(
    distribution: ReturnType<JointModel["distribution"]>,
    uncertaintyMm: number,
    { mm, uncertaintyMm: doubtMm }: { readonly mm: number; readonly uncertaintyMm: number },
  ): Pick<ExpectedReturns, "printed" | "relabelled" | "standardError"> {
    const ends = boxes
      .flatMap(([range] = []) => (range === undefined ? [] : [range.from, range.to]))
      .filter(Number.isFinite);
    const stretches = pickStretches(
      (at) => pickAt([at]),
      Math.min(...ends) - 8 * uncertaintyMm,
      Math.max(...ends) + 8 * uncertaintyMm,
      uncertaintyMm / 8,
    );
    const along = { distribution, boxes, stretches, uncertaintyMm };
    const over = (chosenMm: number): ReturnShares => {
      const parts = normalNodes(doubtMm).map(({ z, weight }) => ({
        weight,
        shares: sumReturns(along, chosenMm, mm + doubtMm * z),
      }));
      const mean = (share: keyof ReturnShares): number =>
        parts.reduce((sum, { weight, shares }) => sum + weight * shares[share], 0);
      return { kept: mean("kept"), exchanged: mean("exchanged"), sentBack: mean("sentBack") };
    };
    return {
      printed: over(0),
      relabelled: over(mm),
      standardError: { printed: 0, relabelled: 0, saved: 0 },
    };
  }
}

function unusedOffsets(
  { offsets }: ReturnsRequest,
  { chart }: SizeChart,
  judged: readonly ChartDimension[],
): readonly Issue[] {
  return (Object.keys(offsets) as ChartDimension[])
    .filter((dimension) => !judged.includes(dimension))
    .map((dimension) => {
      const facts = {
        dimension: speakDimension(dimension),
        chart,
        judged: judged.map(speakDimension).join(", "),
      };
      const details = { path: ["offsets", dimension], received: dimension, facts };
      return createIssue(afterwardsIssues, "returns-offset-not-judged", details);
    });
}
