import type { ChartDimension, SizeChart, SizeRanges } from "@tapewise/charts";
import { type Interval, union } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { Box } from "@tapewise/population";
import { coverageIssues } from "./issues.ts";
import {
  bounded,
  choosesBelt,
  dimensionOrder,
  isAroundTheBelt,
  type Plan,
  type PlannedSize,
  spoken,
} from "./plan.ts";

interface Judged {
  readonly charted: ChartDimension;
  readonly dimension: DimensionId;
}

/**
 * What a chart offers to people of whom some variables are known, by the rules of a choice: a size that says
 * nothing of the main dimension is not judged, one that says nothing of another sets no bound there, and a hip
 * belt that can be had in another size does not bind the size of the pack.
 */
export function planChart(chart: SizeChart, variables: readonly string[], people: string): Outcome<Plan> {
  const about = { path: ["chart"], facts: { chart: chart.chart, people } };
  if (chart.sizes.length === 0) {
    return failure([createIssue(coverageIssues, "coverage-chart-without-sizes", about)]);
  }
  const stated = statedBy([...chart.sizes, ...chart.belts]);
  const judged = stated.flatMap((charted) => judge(charted, variables));
  const ofSizes = judged.filter(({ charted }) =>
    chart.sizes.some(({ ranges }) => ranges[charted] !== undefined),
  );
  const binding = choosesBelt(chart) ? ofSizes.filter(({ charted }) => !isAroundTheBelt(charted)) : ofSizes;
  const ofPack = binding.length > 0 ? binding : ofSizes;
  const [main] = ofPack;
  if (main === undefined) {
    const facts = {
      ...about.facts,
      charted: statedBy(chart.sizes).map(spoken).join(", ") || "nothing",
      known: variables.map((name) => name.replaceAll("-", " ")).join(", "),
    };
    return failure([createIssue(coverageIssues, "coverage-nothing-judged", { ...about, facts })]);
  }
  const ofBelts = judged.filter((one) => !ofPack.includes(one) && isAroundTheBelt(one.charted));
  const belts = beltsOf(chart).map(({ ranges }) => ranges);

  const sizes: PlannedSize[] = [];
  const offers: { size: number; box: Box }[] = [];
  const issues = issuesOf(chart, stated, judged, people);
  for (const { name, ranges } of chart.sizes) {
    const range = ranges[main.charted];
    if (range === undefined) {
      const facts = { ...about.facts, dimension: spoken(main.charted) };
      const details = { path: ["chart", "sizes", name], received: name, facts };
      issues.push(createIssue(coverageIssues, "coverage-size-not-judged", details));
      continue;
    }
    const box = boxOf(ranges, ofPack, {});
    const place = { chart: chart.chart, size: name, main: range.interval, mainDimension: main.dimension };
    const size = sizes.push({ ...place, box }) - 1;
    if (box === undefined) continue;
    const boxes = ofBelts.length === 0 ? [box] : belts.flatMap((belt) => boxOf(belt, ofBelts, box) ?? []);
    offers.push(...boxes.map((one) => ({ size, box: one })));
  }
  const used = ofBelts.length === 0 ? ofPack : [...ofPack, ...ofBelts];
  const spans = used.map(({ charted, dimension }) => {
    const parts = (
      ofPack.some((one) => one.charted === charted) ? chart.sizes.map(({ ranges }) => ranges) : belts
    )
      .map((ranges) => ranges[charted]?.interval)
      .filter((part): part is Interval => part !== undefined);
    return { dimension, covered: union(...parts) };
  });
  const dimensions = [...new Set(used.map(({ dimension }) => dimension))];
  const leftOut = stated.filter((charted) => !judged.some((one) => one.charted === charted));
  return success({ sizes, offers, judged: dimensions, leftOut, spans }, issues);
}

function statedBy(sized: readonly { readonly ranges: SizeRanges }[]): readonly ChartDimension[] {
  return dimensionOrder.filter((name) => sized.some(({ ranges }) => ranges[name] !== undefined));
}

/** A chart that says "hip" and not which is judged where its belt would sit, else at the widest part. */
function judge(charted: ChartDimension, variables: readonly string[]): readonly Judged[] {
  const candidates: readonly DimensionId[] =
    charted === "unstated-hip-girth" ? ["hip-belt-girth", "hip-girth"] : [charted];
  const dimension = candidates.find((one) => variables.includes(one));
  return dimension === undefined ? [] : [{ charted, dimension }];
}

function beltsOf(chart: SizeChart): readonly { readonly ranges: SizeRanges }[] {
  return chart.belts.length > 0 ? chart.belts : chart.sizes;
}

function boxOf(ranges: SizeRanges, judged: readonly Judged[], start: Box): Box | undefined {
  let box: Box | undefined = start;
  for (const { charted, dimension } of judged) {
    const range = ranges[charted];
    if (range !== undefined && box !== undefined) box = bounded(box, dimension, range.interval);
  }
  return box;
}

function issuesOf(
  chart: SizeChart,
  stated: readonly ChartDimension[],
  judged: readonly Judged[],
  people: string,
): Issue[] {
  return stated.flatMap((charted) => {
    const dimension = judged.find((one) => one.charted === charted)?.dimension;
    const facts = { chart: chart.chart, people, dimension: spoken(dimension ?? charted) };
    const details = { path: ["chart"], received: charted, facts };
    if (dimension === undefined) return [createIssue(coverageIssues, "coverage-dimension-left-out", details)];
    return dimension === charted ? [] : [createIssue(coverageIssues, "coverage-girth-taken-as", details)];
  });
}
