import { type BodyCheckSetup, partDimensions } from "@tapewise/afterwards";
import { type ChartDimension, type SizeChart, type SizeRanges, speakDimension } from "@tapewise/charts";
import { type Belief, type Beliefs, formBeliefs, type Person } from "@tapewise/fit";
import { createIssue, failure, type Outcome, success } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";

/** The pack that is on the body. */
export interface WornPack {
  readonly chart: SizeChart;
  readonly size: string;
  readonly belt?: string | undefined;
}

/**
 * What a check starts from: the pack, and what the readings say of the length and the girth that its chart goes by.
 * A length is needed only where the chart states one for the size that is worn. Names that the chart does not know are
 * left for the check itself to refuse.
 *
 * Code: `check-length-unknown`.
 */
export function setUpCheck({ chart, size, belt }: WornPack, person: Person): Outcome<BodyCheckSetup> {
  const beliefs = formBeliefs(person.estimates, person.prior);
  const worn = chart.sizes.find(({ name }) => name === size);
  const wornBelt = belt === undefined ? worn : chart.belts.find(({ name }) => name === belt);
  const dimension = stated(partDimensions.harness, worn?.ranges);
  const length = dimension === undefined ? undefined : beliefOf(beliefs, dimension);
  const girthDimension = stated(partDimensions.belt, wornBelt?.ranges);
  const girth = girthDimension === undefined ? undefined : beliefOf(beliefs, girthDimension);
  if (dimension !== undefined && length === undefined) {
    const facts = { dimension: speakDimension(dimension), chart: chart.chart };
    const details = { path: ["readings", dimension], received: chart.chart, facts };
    return failure([createIssue(tapewiseIssues, "check-length-unknown", details)]);
  }
  return success({
    chart,
    size,
    ...(length === undefined ? {} : { length }),
    ...(belt === undefined ? {} : { belt }),
    ...(girth === undefined ? {} : { girth }),
  });
}

function stated(
  dimensions: readonly ChartDimension[],
  ranges: SizeRanges | undefined,
): ChartDimension | undefined {
  return dimensions.find((dimension) => ranges?.[dimension] !== undefined);
}

/** A chart that says "hip" and not which is held against the girth where its belt sits, else the widest. */
function beliefOf(beliefs: Beliefs, dimension: ChartDimension): Belief | undefined {
  if (dimension !== "unstated-hip-girth") return beliefs.of(dimension);
  return beliefs.of("hip-belt-girth") ?? beliefs.of("hip-girth");
}
